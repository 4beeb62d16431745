namespace CoatPlan.Presets;

/// <summary>How well a surface can be got at, and what that does to hands-on time.</summary>
/// <param name="Word">bench, open-bay, overhead or crowded.</param>
/// <param name="Title">In a few words, for a person.</param>
/// <param name="TimeFactor">Hands-on time against work at the bench, 1 or more.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Reach(string Word, string Title, double TimeFactor, Provenance Provenance);
