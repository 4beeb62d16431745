using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>Area that one package covers in one coat on a flat panel, both ways.</summary>
/// <param name="ByCovers">As the label puts it, ordinary loss included; null where it does not.</param>
/// <param name="BySolids">By volume solids, dry film and loss; null where one of them or the volume is unknown.</param>
public sealed record PackageReach(Area? ByCovers, Area? BySolids)
{
    /// <summary>What a label allows.</summary>
    /// <param name="label">The product.</param>
    public static PackageReach Of(Label label)
    {
        ArgumentNullException.ThrowIfNull(label);
        return new PackageReach(
            label.Covers,
            label is { CoversMeasured: false, NetVolume: { } net, SolidsByVolume: { } solids, DryFilm: { } film } ? WetFilm.Covers(net, solids, film, label.Loss) : null);
    }

    /// <summary>Whether anything can be counted at all.</summary>
    public bool IsKnown => ByCovers is not null || BySolids is not null;

    /// <summary>The way that asks for more, which is the one that reaches less far; the label's own where both reach alike.</summary>
    public DemandBasis Basis => BySolids is { } solids && (ByCovers is not { } covers || solids < covers) ? DemandBasis.Solids : DemandBasis.Covers;

    /// <summary>Area one package covers on the basis that counts; null where nothing is known.</summary>
    public Area? Area => Basis == DemandBasis.Solids ? BySolids : ByCovers;
}
