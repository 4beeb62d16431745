namespace CoatPlan.Presets;

/// <summary>Preset files that hold rules and sentences of other rooms, and no table of the catalogue.</summary>
public static class RuleFiles
{
    /// <summary>Which operations are done, and why.</summary>
    public const string Prep = "prep.yaml";

    /// <summary>What will go wrong, and what to do instead.</summary>
    public const string Warnings = "warnings.yaml";

    /// <summary>What a person must be told.</summary>
    public const string Cautions = "cautions.yaml";

    /// <summary>Whether a file is one of them, by the end of its name.</summary>
    /// <param name="file">A preset file.</param>
    public static bool Holds(PresetText file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return Is(file, Prep) || Is(file, Warnings) || Is(file, Cautions);
    }

    /// <summary>Whether a file is the one of a name, in whatever folder.</summary>
    /// <param name="file">A preset file.</param>
    /// <param name="name">A name of this class.</param>
    public static bool Is(PresetText file, string name)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Name.Split('/', '\\')[^1] == name;
    }
}
