namespace CoatPlan.Explanations;

/// <summary>One figure of a plan: what it came to, by which sum, from what, and where that is from.</summary>
/// <remarks>Its inputs are explained in the same way, down to what a person wrote, what a label or a preset says, or a constant with its source.</remarks>
public sealed record Explanation
{
    /// <summary>What the figure is, in words.</summary>
    public required string What { get; init; }

    /// <summary>What it came to, with its unit, in the job's units.</summary>
    public required string Value { get; init; }

    /// <summary>The bare number as the plan's JSON holds it; null for what is no number.</summary>
    public double? Number { get; init; }

    /// <summary>The sum or the rule by which it follows from its inputs; empty for what is given.</summary>
    public string Formula { get; init; } = "";

    /// <summary>Where the sum, or what is given, comes from.</summary>
    public required string Source { get; init; }

    /// <summary>What it follows from.</summary>
    public ImmutableArray<Explanation> Inputs { get; init; } = [];

    /// <summary>Its place in the plan's JSON, such as <c>supplies[black].cans</c>; empty for an input that has none.</summary>
    public string Path { get; init; } = "";
}
