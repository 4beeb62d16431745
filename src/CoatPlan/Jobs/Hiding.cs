namespace CoatPlan.Jobs;

/// <summary>How well one coat hides: a word or a contrast ratio, never both.</summary>
public sealed record Hiding
{
    /// <summary><c>good</c>, <c>fair</c> or <c>poor</c>; null where a ratio is given.</summary>
    public string? Word { get; init; }

    /// <summary>Contrast ratio of one coat, more than 0 and at most 1; null where a word is given.</summary>
    public double? ContrastRatio { get; init; }
}
