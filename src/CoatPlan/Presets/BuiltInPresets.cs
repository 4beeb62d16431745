namespace CoatPlan.Presets;

/// <summary>The preset files that come with the library.</summary>
public static class BuiltInPresets
{
    private const string Folder = "presets/";

    private static readonly Lazy<ImmutableArray<PresetText>> LoadedTexts = new(LoadTexts);
    private static readonly Lazy<Catalogue> LoadedCatalogue = new(LoadCatalogue);

    /// <summary>The files, by name.</summary>
    public static ImmutableArray<PresetText> Texts => LoadedTexts.Value;

    /// <summary>The catalogue of the built-in files alone.</summary>
    /// <exception cref="InvalidOperationException">A built-in file is broken, which a test keeps from happening.</exception>
    public static Catalogue Read() => LoadedCatalogue.Value;

    private static ImmutableArray<PresetText> LoadTexts()
    {
        var assembly = typeof(BuiltInPresets).Assembly;
        return [.. assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name => new PresetText(name, TextOf(assembly.GetManifestResourceStream(name)!)))];
    }

    private static string TextOf(Stream stream)
    {
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static Catalogue LoadCatalogue()
    {
        var reading = CatalogueReader.Read(Texts, []);
        return reading.Catalogue
            ?? throw new InvalidOperationException("The built-in presets are broken: " + string.Join("; ", reading.Problems.Take(20)));
    }
}
