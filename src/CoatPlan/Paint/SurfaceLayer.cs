using CoatPlan.Areas;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>One layer of a paint system on one surface.</summary>
public sealed record SurfaceLayer
{
    /// <summary>The surface.</summary>
    public required MeasuredSurface Surface { get; init; }

    /// <summary>Layer of the system, from 1.</summary>
    public required int Layer { get; init; }

    /// <summary>What is put on.</summary>
    public required Label Label { get; init; }

    /// <summary>How many coats, and who asks for them.</summary>
    public required CoatsAsked Coats { get; init; }

    /// <summary>Whether a mist coat goes before them.</summary>
    public required bool Mist { get; init; }

    /// <summary>Share of the surface that is sprayed, over 0 and up to 1: the bare share for bare spots, else all.</summary>
    public required Ratio Share { get; init; }

    /// <summary>A primer of another shade that would save coats; null where none would.</summary>
    public required PrimerShade? Primer { get; init; }

    /// <summary>True area that one full coat covers, all pieces.</summary>
    public Area Area => Surface.Total.Likely * Share.DecimalFractions;
}
