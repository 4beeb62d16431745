namespace CoatPlan.Jobs;

/// <summary>A value of a job file, set or not, with what it says.</summary>
public sealed record OutlineRow
{
    /// <summary>The way to it.</summary>
    public required JobPath Path { get; init; }

    /// <summary>Its key, or its number in a list, from 1.</summary>
    public required string Name { get; init; }

    /// <summary>What kind of value it is.</summary>
    public required OutlineKind Kind { get; init; }

    /// <summary>What is written there, on one line; empty where nothing is.</summary>
    public required string Value { get; init; }

    /// <summary>The single values that are written there.</summary>
    public ImmutableArray<string> Values { get; init; } = [];

    /// <summary>Whether it is written there; otherwise its default holds.</summary>
    public required bool IsSet { get; init; }

    /// <summary>Whether the job needs it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>What it says, in a few words.</summary>
    public required string Says { get; init; }

    /// <summary>An example, as it is written; empty for a map or a list.</summary>
    public required string Example { get; init; }

    /// <summary>The words that it can be; empty where it is not a word.</summary>
    public ImmutableArray<string> Words { get; init; } = [];
}
