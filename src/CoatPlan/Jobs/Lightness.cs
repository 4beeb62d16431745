namespace CoatPlan.Jobs;

/// <summary>How light a surface is: CIE L* or a word, never both.</summary>
public sealed record Lightness
{
    /// <summary><c>black</c>, <c>dark</c>, <c>mid</c>, <c>light</c> or <c>white</c>; null where L* is given.</summary>
    public string? Word { get; init; }

    /// <summary>CIE L*, 0 to 100; null where a word is given.</summary>
    public double? LStar { get; init; }
}
