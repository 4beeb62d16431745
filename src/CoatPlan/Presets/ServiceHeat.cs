using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>How hot a place in the engine bay gets.</summary>
/// <param name="Place">The place.</param>
/// <param name="Usual">In ordinary driving.</param>
/// <param name="Peak">After stopping hot.</param>
/// <param name="Note">What makes it hotter; may be empty.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record ServiceHeat(string Place, Temperature Usual, Temperature Peak, string Note, Provenance Provenance);
