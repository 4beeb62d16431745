namespace CoatPlan.Presets;

/// <summary>What is on a surface before the work.</summary>
/// <param name="Word">The contract's word, such as <c>factory paint</c>.</param>
/// <param name="Title">In a few words, for a person.</param>
/// <param name="Lightness">L* where the job gives none, 0 to 100; null: the bare material's own.</param>
/// <param name="IsPaint">Whether there is a film of any kind to keep, scuff or strip.</param>
/// <param name="MayHoldLead">Whether it is suspected of lead or chromate whatever the year.</param>
/// <param name="OldMayHoldLead">Whether it is suspected on a vehicle built before the year of figure <c>lead-before-year</c>.</param>
/// <param name="Gloss">Whether it is glossy until scuffed.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Finish(
    string Word, string Title, double? Lightness, bool IsPaint, bool MayHoldLead, bool OldMayHoldLead, bool Gloss, Provenance Provenance);
