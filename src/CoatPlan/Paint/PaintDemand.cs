using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>How many packages of each product a job takes.</summary>
public static class PaintDemand
{
    /// <summary>Draws from which the spread of a demand is read: enough that the 10 % and 90 % marks move by about half a percent.</summary>
    public const int Draws = 4000;

    private const double LowShare = 0.10;
    private const double HighShare = 0.90;

    /// <summary>The demand for each product that a system of the job names, in the job's order of products.</summary>
    /// <remarks>
    /// <see cref="ProductDemand.Cans"/> is the smallest whole number that covers the likely demand and its reserve, at least
    /// <see cref="ProductDemand.CansLow"/>. All surfaces of a product are pooled before rounding up. The draws vary each surface's area within its
    /// spread, the share that lands, and count what clearing the nozzle takes in each session; a two-part can that was activated is used up within
    /// its time, so its draws round up each time anew.
    /// </remarks>
    /// <param name="job">The job: its name is the seed of the draws.</param>
    /// <param name="coats">Its coats at one station.</param>
    /// <param name="sprayed">The dated coats of all stations; empty before there is a timetable: then each layer is one session.</param>
    /// <param name="labels">Its labels.</param>
    /// <param name="figures">The spread of a label's coverage, and how long a can may rest within a session.</param>
    public static ImmutableArray<ProductDemand> Count(
        Job job, Coats coats, ImmutableArray<SprayedCoat> sprayed, Labels labels, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(coats);
        ArgumentNullException.ThrowIfNull(labels);
        ArgumentNullException.ThrowIfNull(figures);

        var named = job.Surfaces.Select(surface => surface.System).Distinct()
            .SelectMany(key => job.Systems.First(system => system.Key == key).Layers).Select(layer => layer.Product).ToHashSet();
        var luck = new SurfaceLuck(job.Name);
        ImmutableArray<SprayedProduct> products =
        [
            .. labels.All.Where(label => named.Contains(label.Key)).Select(label => Sprayed(label, coats, sprayed, job, luck, figures)),
        ];
        // All products in one stretch of the draws before the next: they share the luck of the surfaces they go on.
        for (var stretch = 0; stretch * DrawnStretch.Length < Draws; stretch++)
        {
            foreach (var product in products)
                product.Demand.Draw(stretch);
        }

        return [.. products.Select(product => Demand(product, job))];
    }

    private static SprayedProduct Sprayed(
        Label label, Coats coats, ImmutableArray<SprayedCoat> sprayed, Job job, SurfaceLuck luck, Figures figures)
    {
        ImmutableArray<SurfaceCoat> own = [.. coats.All.Where(coat => coat.Product == label.Key)];
        var sessions = SpraySessions.Of(label, own, [.. sprayed.Where(one => one.Product == label.Key)], job.Crew.Stations, figures);
        var coversSpread = figures.Share(label.CoversMeasured ? "covers-spread-measured" : "covers-spread");
        return new SprayedProduct(label, own, sessions.Count, new DrawnDemand(label, sessions, luck, coversSpread, Draws));
    }

    private static ProductDemand Demand(SprayedProduct product, Job job)
    {
        var (label, coats) = (product.Label, product.Coats);
        var reach = PackageReach.Of(label);
        var stations = job.Crew.Stations;
        var area = coats.Aggregate(Area.Zero, (sum, coat) => sum + coat.AreaCoats) * stations;
        var likely = coats.Sum(coat => coat.Packages) * stations;
        // Packages of the other basis follow from the same sum, the form's factor included.
        var onBasis = reach.Area is { } basisReach ? basisReach.SquareMeters * likely : 0;
        var drawn = product.Demand.Drawn;
        var low = drawn.At(LowShare);
        var cans = Math.Max(WholePackages.For(likely * (1 + job.Reserve.DecimalFractions)), low);
        var high = Math.Max(cans, drawn.At(HighShare));
        return new ProductDemand
        {
            Label = label,
            AreaCoats = area,
            ByCovers = reach.ByCovers is { } covers ? onBasis / covers.SquareMeters : null,
            BySolids = reach.BySolids is { } solids ? onBasis / solids.SquareMeters : null,
            Basis = reach.Basis,
            Likely = likely,
            Sessions = product.Sessions,
            Cans = cans,
            CansLow = low,
            CansHigh = high,
            Covered = drawn.Around(low, high),
        };
    }

    /// <summary>A product as it is sprayed.</summary>
    /// <param name="Label">The product.</param>
    /// <param name="Coats">Its coats at one station.</param>
    /// <param name="Sessions">Times that it is taken up anew.</param>
    /// <param name="Demand">What the draws ask of it.</param>
    private sealed record SprayedProduct(Label Label, ImmutableArray<SurfaceCoat> Coats, int Sessions, DrawnDemand Demand);
}
