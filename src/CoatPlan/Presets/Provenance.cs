namespace CoatPlan.Presets;

/// <summary>Where a row of the presets comes from: its source in words, and how well that is vouched for.</summary>
/// <param name="Source">Document, clause, edition, or the kind of text.</param>
/// <param name="Status">The weakest status of the row's fields, unless a field has its own.</param>
public sealed record Provenance(string Source, Status Status);
