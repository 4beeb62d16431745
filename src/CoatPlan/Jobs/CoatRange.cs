namespace CoatPlan.Jobs;

/// <summary>How many coats a label allows: "2-3", or a single number as both ends.</summary>
/// <param name="Least">Fewest coats, 1 or more.</param>
/// <param name="Most">Most coats, at least <paramref name="Least"/>.</param>
public readonly record struct CoatRange(int Least, int Most);
