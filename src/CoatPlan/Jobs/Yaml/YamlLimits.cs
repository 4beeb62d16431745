namespace CoatPlan.Jobs.Yaml;

/// <summary>How much a text may hold, so that no file takes long or much memory to be refused.</summary>
internal static class YamlLimits
{
    /// <summary>Most bytes of a file.</summary>
    public const int Bytes = 2 * 1024 * 1024;

    /// <summary>Most levels of maps and lists.</summary>
    public const int Levels = 40;

    /// <summary>Most values, aliases counted out.</summary>
    public const int Values = 100_000;
}
