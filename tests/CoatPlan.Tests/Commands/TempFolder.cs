namespace CoatPlan.Tests.Commands;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("coatplan-test").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public string File(string name, string content)
    {
        System.IO.File.WriteAllText(File(name), content);
        return File(name);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
