using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>How much of one product a job takes.</summary>
public sealed record ProductDemand
{
    /// <summary>The product.</summary>
    public required Label Label { get; init; }

    /// <summary>Area times coats, a mist coat counted half, all surfaces and stations.</summary>
    public required Area AreaCoats { get; init; }

    /// <summary>Packages by the label's coverage, before reserve; null where it gives none.</summary>
    public required double? ByCovers { get; init; }

    /// <summary>Packages by volume solids, film and loss, before reserve; null where they are not known.</summary>
    public required double? BySolids { get; init; }

    /// <summary>The way that asks for more.</summary>
    public required DemandBasis Basis { get; init; }

    /// <summary>Packages before reserve on that basis, not rounded.</summary>
    public required double Likely { get; init; }

    /// <summary>Times the product is taken up anew: a share of a package goes into clearing the nozzle each time, which the draws count.</summary>
    public required int Sessions { get; init; }

    /// <summary>Packages needed in all, reserve included.</summary>
    public required int Cans { get; init; }

    /// <summary>Packages that cover 10 % of the draws without reserve.</summary>
    public required int CansLow { get; init; }

    /// <summary>The larger of <see cref="Cans"/> and what covers 90 % of the draws.</summary>
    public required int CansHigh { get; init; }

    /// <summary>For each number of packages around the likely one, the share of the draws that it covers.</summary>
    public required ImmutableArray<CoveredShare> Covered { get; init; }

    /// <summary>Likely demand before reserve, of the whole contents; null where the package's volume is unknown.</summary>
    public Volume? LikelyVolume => Label.NetVolume is { } net ? net * Likely : null;
}
