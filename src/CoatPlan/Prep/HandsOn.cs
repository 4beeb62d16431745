using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>Hands-on time of operations.</summary>
/// <remarks>Per area, edge, plug and part, times what form and reach cost, with rest, and never under the least of an operation and part.</remarks>
internal static class HandsOn
{
    private const string OpenBay = "open-bay";
    private const string Bench = "bench";
    private const string Film = "film";
    private const int LastStageOnVehicle = 4;

    /// <summary>Time for all pieces of a surface, whole seconds, rounded up.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="operation">What is done and how.</param>
    /// <param name="row">What the trade knows of the operation.</param>
    /// <param name="masked">What is masked on one piece.</param>
    /// <param name="catalogue">Rates, forms and reaches.</param>
    public static Duration OnSurface(
        SettledSurface surface, SettledOperation operation, Presets.Operation row, ImmutableArray<MaskedItem> masked, Catalogue catalogue)
    {
        var rate = Rate(surface, operation, row);
        var area = surface.Measured.Piece.SquareMeters * (operation.Way?.OnlyBare == true ? surface.Measured.BareShare.DecimalFractions : 1);
        var minutes = rate.FixedMinutes
            + (rate.MinutesPerSquareMetre * area * catalogue.Form(surface.Surface.Form).TimeFactor)
            + (operation.Word == "mask" ? MaskMinutes(row, masked, catalogue) : ByPiece(rate, surface, operation.Word, masked, catalogue));

        var each = minutes * Reach(surface, row, catalogue) * (1 + catalogue.Figures.Share("rest").DecimalFractions);
        return WholeSeconds(Math.Max(each, LeastMinutes(catalogue)) * surface.Measured.Count);
    }

    /// <summary>The rate of the way it is done, or else of the surface's conditions.</summary>
    public static OperationRate Rate(SettledSurface surface, SettledOperation operation, Presets.Operation row) =>
        operation.Way?.Rate is { } name ? row.Rate(name) : row.RateFor(surface.Surface.Conditions);

    /// <summary>Time of an operation of the whole job, whole seconds, rounded up.</summary>
    /// <param name="word">The operation.</param>
    /// <param name="surfaces">Those it is about.</param>
    /// <param name="catalogue">Rates.</param>
    public static Duration OnJob(string word, IReadOnlyCollection<SettledSurface> surfaces, Catalogue catalogue)
    {
        var rate = catalogue.Operation(word).RateFor([]);
        var area = surfaces.Sum(surface => surface.Measured.Piece.SquareMeters * surface.Measured.Count);
        var pieces = surfaces.Sum(surface => surface.Measured.Count);
        var minutes = rate.FixedMinutes + (rate.MinutesPerSquareMetre * area) + (rate.MinutesPerPlug * pieces);
        return WholeSeconds(Math.Max(minutes * (1 + catalogue.Figures.Share("rest").DecimalFractions), LeastMinutes(catalogue)));
    }

    private static double MaskMinutes(Presets.Operation row, ImmutableArray<MaskedItem> masked, Catalogue catalogue)
    {
        var minutes = 0.0;
        foreach (var item in masked)
        {
            var rate = row.Rate(item.Kind == Masking.Surroundings ? "edge" : catalogue.MaskKind(item.Kind).Rate);
            minutes += (rate.MinutesPerMetre * item.Edge.Meters)
                + (rate.MinutesPerPlug * item.Plugs)
                + (row.Rate(Film).MinutesPerSquareMetre * item.Area.SquareMeters);
        }

        return minutes;
    }

    private static double ByPiece(
        OperationRate rate, SettledSurface surface, string word, ImmutableArray<MaskedItem> masked, Catalogue catalogue)
    {
        var (taped, plugs) = (0.0, 0);
        foreach (var item in masked)
            (taped, plugs) = (taped + item.Edge.Meters, plugs + item.Plugs);
        var edge = word == "featheredge" ? Chips(surface.Surface, catalogue) * surface.Measured.Piece.SquareMeters : taped;
        return (rate.MinutesPerMetre * edge) + (rate.MinutesPerPlug * Math.Max(1, plugs));
    }

    /// <summary>Edge of the chips, metres for each square metre.</summary>
    private static double Chips(JobSurface surface, Catalogue catalogue)
    {
        var edge = 0.0;
        foreach (var condition in surface.Conditions)
            edge += catalogue.Condition(condition).ChipEdgePerSquareMetre;
        return edge;
    }

    private static double Reach(SettledSurface surface, Presets.Operation row, Catalogue catalogue)
    {
        var onVehicle = surface.Surface.Stays
            || (!surface.OnBench && (row.Stage <= LastStageOnVehicle || row.Word == "refit"));
        return catalogue.Reach(onVehicle ? OpenBay : Bench).TimeFactor;
    }

    private static double LeastMinutes(Catalogue catalogue) => catalogue.Figures.Time("least-minutes").TotalMinutes;

    private static Duration WholeSeconds(double minutes) => Duration.FromSeconds((long)Math.Ceiling((minutes * 60) - 1e-6));
}
