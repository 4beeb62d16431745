using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>How long putting paint on takes.</summary>
public static class SprayTime
{
    private const string OnTheBench = "bench";
    private const string OnTheVehicle = "open-bay";

    /// <summary>Hands-on time of one coat on all pieces of a surface, rest included, opening packages not.</summary>
    /// <remarks>
    /// The slower of two ways counts: the rate of the trade by area, form and reach with its fixed part for each piece, and what the can gives:
    /// grams ÷ flow ÷ share of the time the button is down.
    /// </remarks>
    /// <param name="surface">The surface.</param>
    /// <param name="sprayed">True area that the coat covers, all pieces.</param>
    /// <param name="mass">What the coat takes of the contents; null where unknown.</param>
    /// <param name="method">How it goes on.</param>
    /// <param name="rate">The rate of that way.</param>
    /// <param name="catalogue">Factors of form and reach, and rest.</param>
    public static Duration Of(
        MeasuredSurface surface, Area sprayed, Mass? mass, CoatingMethod method, OperationRate rate, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(surface);
        ArgumentNullException.ThrowIfNull(method);
        ArgumentNullException.ThrowIfNull(rate);
        ArgumentNullException.ThrowIfNull(catalogue);

        var reach = catalogue.Reach(surface.Surface.Stays ? OnTheVehicle : OnTheBench).TimeFactor;
        var byArea = sprayed.SquareMeters * rate.MinutesPerSquareMetre * catalogue.Form(surface.Surface.Form).TimeFactor * reach;
        var byFlow = mass is { } known ? ByFlow(known, method)?.TotalMinutes ?? 0 : 0;
        var minutes = Math.Max(byArea, byFlow) + (surface.Count * rate.FixedMinutes);
        return WholeSeconds(minutes * (1 + catalogue.Figures.Share("rest").DecimalFractions));
    }

    /// <summary>Hands-on time of one coat on a batch: its pieces, and opening, shaking and clearing what is used up meanwhile; whole minutes.</summary>
    /// <param name="coats">One coat of one product on one or more surfaces.</param>
    /// <param name="catalogue">Rates of opening, and rest.</param>
    /// <exception cref="ArgumentException">No coat, or coats of more than one product.</exception>
    public static Duration OfBatch(ImmutableArray<SurfaceCoat> coats, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        if (coats.IsDefaultOrEmpty || coats.Any(coat => coat.Product != coats[0].Product))
            throw new ArgumentException("one coat of one product on one or more surfaces", nameof(coats));

        var opening = OfOpening(coats[0].On.Label.Method, coats[0].IsMist, coats.Sum(coat => coat.Packages), catalogue);
        var pieces = coats.Aggregate(Duration.Zero, (sum, coat) => sum + coat.Hands);
        return Duration.FromMinutes(Math.Ceiling((pieces + opening).TotalMinutes));
    }

    /// <summary>Hands-on time of opening, shaking and clearing packages for one coat, rest included.</summary>
    /// <param name="method">How it goes on.</param>
    /// <param name="mist">Whether it is a mist coat.</param>
    /// <param name="packages">Packages that the coat takes; those begun count whole.</param>
    /// <param name="catalogue">Rates of opening, and rest.</param>
    internal static Duration OfOpening(CoatingMethod method, bool mist, double packages, Catalogue catalogue) =>
        WholeSeconds(WholePackages.For(packages) * Rate(method, mist, catalogue).MinutesPerPackage * (1 + catalogue.Figures.Share("rest").DecimalFractions));

    /// <summary>The rate of a way of putting paint on; a mist coat from a can or a gun has its own.</summary>
    /// <param name="method">How it goes on.</param>
    /// <param name="mist">Whether it is a mist coat.</param>
    /// <param name="catalogue">The rates.</param>
    internal static OperationRate Rate(CoatingMethod method, bool mist, Catalogue catalogue) => catalogue.Operation("coat").Rate(method.Kind switch
    {
        ApplicationMethod.Brush => "brush",
        _ when mist => "mist",
        ApplicationMethod.SprayGun => "spray-gun",
        _ => "aerosol",
    });

    /// <summary>Time that the nozzle needs; null for a brush.</summary>
    /// <param name="mass">What leaves the nozzle.</param>
    /// <param name="method">Flow, and share of the time the button is down.</param>
    internal static Duration? ByFlow(Mass mass, CoatingMethod method) => method.Flow is { } flow
        ? Duration.FromSeconds(mass.Grams / flow.GramsPerSecond / method.ButtonShare)
        : null;

    private static Duration WholeSeconds(double minutes) => Duration.FromSeconds(Math.Round(minutes * 60, MidpointRounding.AwayFromZero));
}
