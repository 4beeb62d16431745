using CoatPlan.Climate;
using CoatPlan.Presets;
using CoatPlan.Scheduling;
using CoatPlan.Timetable;
using UnitsNet;

namespace CoatPlan.Outlook;

/// <summary>An arranged job laid out for carrying its schedule out thousands of times: causes, products, kinds of weather.</summary>
internal sealed class ChanceModel
{
    // Weather is drawn in equal parts: enough of them that more would not move a finish by much, and odd, so that the middle one is the weather as told.
    private const int AirParts = 5;
    private const int DewPointParts = 3;
    private const int DryingPaces = 4;

    private readonly Settled settled;
    private readonly Catalogue catalogue;
    private readonly HourlyForecast? forecast;
    private readonly ImmutableArray<int> redo;
    private readonly int[] floors;
    private readonly int[]? order;

    public ChanceModel(Settled settled, Catalogue catalogue, HourlyForecast? forecast, ChanceSpreads spreads)
    {
        (this.settled, this.catalogue, this.forecast, Spreads) = (settled, catalogue, forecast, spreads);
        var open = settled.Arranged.Open ?? throw new ArgumentException("A chance is of a job of which the whole was placed.", nameof(settled));
        Plan = settled.Arranged.OpenSchedule!;
        Work = [.. open.Network.Activities.Select(activity => activity.Work)];
        redo = OtherAir.Redo(open);

        var products = open.Nodes.Select(node => node.Coat?.Label).OfType<Label>().DistinctBy(label => label.Key).ToArray();
        Products = products.Length;
        OfProduct = [.. products.Select(label => Indexes(open, node => node.Coat?.Label.Key == label.Key))];

        var tasks = Enumerable.Range(0, open.Nodes.Length).Where(i => IsDrawn(open.Nodes[i])).GroupBy(i => TaskName(open.Nodes[i]), StringComparer.Ordinal).ToArray();
        Causes =
        [
            .. tasks.Select(task => $"more time than planned {task.Key}"),
            .. products.Select(label => $"drying of {label.Name} slower than the label says"),
            "weather colder or damper than told",
        ];
        WeatherCause = Causes.Length - 1;
        OfTask = [.. tasks.Select(task => task.ToImmutableArray()), .. products.Select(_ => ImmutableArray<int>.Empty), []];
        OfDrying = [.. tasks.Select(_ => ImmutableArray<int>.Empty), .. OfProduct, []];

        Paces = [.. Levels(DryingPaces, spreads.Drying.DecimalFractions > 0, level => 1 + spreads.Drying.DecimalFractions * level / (DryingPaces - 1))];
        Weathers =
        [
            .. Parts(AirParts, spreads.Air.Kelvins).SelectMany(air => Parts(DewPointParts, spreads.DewPoint.Kelvins).Select(dew =>
                (TemperatureDelta.FromKelvins(air), TemperatureDelta.FromKelvins(dew)))),
        ];
        WeatherAsTold = Weathers.IndexOf((TemperatureDelta.Zero, TemperatureDelta.Zero));
        var asTold = FrameOf(TemperatureDelta.Zero, TemperatureDelta.Zero);
        order = asTold.Order;
        floors = RepairFloors.Of(asTold, Plan);
    }

    public ChanceSpreads Spreads { get; }

    public Schedule Plan { get; }

    public ImmutableArray<int> Work { get; }

    public int Products { get; }

    /// <summary>For each product its coats.</summary>
    public ImmutableArray<ImmutableArray<int>> OfProduct { get; }

    /// <summary>What may be answerable for a late finish: each kind of work, each product's drying, and last the weather.</summary>
    public ImmutableArray<string> Causes { get; }

    /// <summary>For each cause the activities whose time is its; none for drying and weather.</summary>
    public ImmutableArray<ImmutableArray<int>> OfTask { get; }

    /// <summary>For each cause the coats whose drying is its; none for work and weather.</summary>
    public ImmutableArray<ImmutableArray<int>> OfDrying { get; }

    public int WeatherCause { get; }

    /// <summary>How much longer films take at each pace, the label's own first.</summary>
    public ImmutableArray<double> Paces { get; }

    /// <summary>Kinds of weather that are equally likely.</summary>
    public ImmutableArray<(TemperatureDelta Air, TemperatureDelta DewPoint)> Weathers { get; }

    /// <summary>The kind of weather that is off by nothing.</summary>
    public int WeatherAsTold { get; }

    /// <summary>One that carries the plan out in a kind of weather; each thread has its own.</summary>
    public Repair In(TemperatureDelta air, TemperatureDelta dewPoint) => new(FrameOf(air, dewPoint), floors);

    private RepairFrame FrameOf(TemperatureDelta air, TemperatureDelta dewPoint)
    {
        var job = settled.Place.Job;
        var place = job.Place with { Weather = WeatherOff.Of(job.Place.Weather, air, dewPoint) };
        var climate = PlaceClimate.Of(place, job.Start, ClimateFigures.Of(catalogue), WeatherOff.Of(forecast, air, dewPoint));
        return new RepairFrame([.. Paces.Select(slowness => OtherAir.Of(settled, climate, catalogue, slowness).Network)], Plan, redo, order);
    }

    private static bool IsDrawn(WorkNode node) => !node.IsMilestone && node.Activity.Fixed is null;

    // By the word of an operation, whatever its way: three ways to scuff are one thing that takes longer than it should.
    private static string TaskName(WorkNode node) => node.Operation is { } operation ? $"to {operation.Word.Replace('-', ' ')}" : $"for coats of {node.Coat!.Label.Name}";

    private static ImmutableArray<int> Indexes(WorkNetwork network, Func<WorkNode, bool> isMeant) =>
        [.. Enumerable.Range(0, network.Nodes.Length).Where(i => isMeant(network.Nodes[i]))];

    private static IEnumerable<double> Levels(int count, bool isSpread, Func<int, double> at) => Enumerable.Range(0, isSpread ? count : 1).Select(at);

    // The middles of equally likely parts of a spread that is likeliest at 0 and falls off straight to both ends.
    private static IEnumerable<double> Parts(int count, double spread)
    {
        if (spread == 0)
            return [0];

        return Enumerable.Range(0, count).Select(part => spread * Quantile((part + 0.5) / count));
    }

    private static double Quantile(double share) => share < 0.5 ? Math.Sqrt(2 * share) - 1 : 1 - Math.Sqrt(2 * (1 - share));
}
