using CoatPlan.Presets;

namespace CoatPlan.Paint;

/// <summary>What is drawn of one opening of packages.</summary>
/// <param name="Surfaces">Likely packages on each surface, how far its area may be off, and its luck.</param>
/// <param name="Clearing">Packages that clear the nozzle.</param>
internal sealed record DrawnOpening(ImmutableArray<(double Likely, double Spread, DrawnStretch Luck)> Surfaces, double Clearing)
{
    /// <summary>That of an opening of a product.</summary>
    public static DrawnOpening Of(SprayOpening opening, Label label, SurfaceLuck luck) => new(
        [
            .. opening.Coats.GroupBy(coat => coat.Surface).Select(surface => (
                surface.Sum(coat => coat.Packages) * opening.Times,
                surface.First().On.Surface.Surface.Spread.DecimalFractions,
                luck.Of(surface.Key))),
        ],
        opening.Sessions * label.Method.SetupLoss.DecimalFractions);
}
