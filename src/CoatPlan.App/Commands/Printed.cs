namespace CoatPlan.App.Commands;

/// <summary>Texts that lie in the program and are printed as they are.</summary>
internal static class Printed
{
    /// <summary>A text by name, with LF line ends.</summary>
    /// <param name="name">Its name in the assembly.</param>
    /// <exception cref="ArgumentException">The assembly has no such text.</exception>
    public static string Resource(string name)
    {
        using var stream = typeof(Printed).Assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentException($"'{name}' is no text of the program.", nameof(name));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
