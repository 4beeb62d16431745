using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>A usual underhood piece: a first figure for a surface nobody measured yet.</summary>
/// <param name="Name">What the trade calls it.</param>
/// <param name="Outline">Area of one, relief not counted.</param>
/// <param name="Relief">True over outline area, 1 or more.</param>
/// <param name="Painted">Paintable area and its range, as written.</param>
/// <param name="Materials">Materials it is usually made of, the likeliest first.</param>
/// <param name="Form">panel, casting, bracket or tube.</param>
/// <param name="Gauge">Usual thickness.</param>
/// <param name="Note">What it is more closely; may be empty.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Piece(
    string Name, Area Outline, double Relief, string Painted, ImmutableArray<string> Materials, string Form, Length Gauge, string Note, Provenance Provenance);
