namespace CoatPlan.Jobs;

/// <summary>One step into a value: a key of a map, or an index of a list.</summary>
/// <param name="Key">The key; null: an index.</param>
/// <param name="Index">The index from 0; 0 for a key.</param>
public readonly record struct PathStep(string? Key, int Index);
