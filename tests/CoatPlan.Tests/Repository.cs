namespace CoatPlan.Tests;

/// <summary>The folder with the sources that these tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "CoatPlan.sln")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("no solution above the tests");
        return folder;
    }
}
