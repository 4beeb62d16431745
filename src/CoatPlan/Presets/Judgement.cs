namespace CoatPlan.Presets;

/// <summary>A verdict of the compatibility tables with why.</summary>
/// <param name="Verdict">The answer.</param>
/// <param name="Key">Letter or number of the reason; empty where nothing is known.</param>
/// <param name="Reason">Why, in short words.</param>
/// <param name="Provenance">Where the reason comes from.</param>
public sealed record Judgement(Verdict Verdict, string Key, string Reason, Provenance Provenance);
