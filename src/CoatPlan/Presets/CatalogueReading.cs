using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>What came of reading preset files: the catalogue, or everything that is wrong in them.</summary>
/// <param name="Catalogue">Null where there are problems.</param>
/// <param name="Problems">Each with its file, line and column; empty where all is well.</param>
public sealed record CatalogueReading(Catalogue? Catalogue, ImmutableArray<Problem> Problems);
