using CoatPlan.Air;
using CoatPlan.Cautions;
using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Presets;
using CoatPlan.Supplies;
using CoatPlan.Timetable;
using CoatPlan.Vapour;
using Operation = CoatPlan.Prep.Operation;

namespace CoatPlan;

/// <summary>What follows from when which coat is put on, and of a plan from nothing else: the air that the coats make, what to be told of it, and the packages they take.</summary>
internal sealed class SprayWork
{
    private const string OverPrefix = "over-";

    private readonly ImmutableArray<PlacedCoat> placed;
    private readonly Task<AirReport> air;
    private readonly Lazy<ImmutableArray<ProductDemand>> demand;
    private readonly Lazy<ImmutableArray<Warning>> warnings;
    private readonly Lazy<RespiratorKind?> worn;
    private readonly Lazy<ImmutableArray<Caution>> cautions;
    private readonly Func<ImmutableArray<Operation>, ImmutableArray<ConsumableNeed>> count;
    private Counted? latest;

    /// <summary>Begins to work it out.</summary>
    /// <param name="job">The job.</param>
    /// <param name="labels">The labels of its products.</param>
    /// <param name="trade">What the trade knows.</param>
    /// <param name="prepared">Its surfaces and coats.</param>
    /// <param name="facts">What cautions may follow from, but for what the air comes to.</param>
    /// <param name="placed">When the coats are put on.</param>
    public SprayWork(Job job, Labels labels, Trade trade, PreparedJob prepared, CautionFacts facts, ImmutableArray<PlacedCoat> placed)
    {
        this.placed = placed;
        var figures = trade.Catalogue.Figures;
        Coats = [.. placed.Select(one => new SprayedCoat(one.Coat.Label.Key, one.Coat.Layer, one.Coat.Coat, one.Coat.Surfaces, one.Station ?? 1, one.Start, one.End))];
        // The air is followed aside, while the steps are dated and packages counted.
        air = Task.Run(() => WorkAir.Of(job.Place, Releases(placed, figures), figures));
        demand = new(() => PaintDemand.Count(job, prepared.Coats, Coats, labels, figures));
        warnings = new(() => AirWarnings.Of(Air, figures, job.UnitFormat, key => labels[key].Name, step => Titles.Of(placed.First(one => one.Step == step).Coat)));
        worn = new(() => WornFor(Air, prepared.Coats, trade.Catalogue));
        cautions = new(() => CautionsFor.Job(With(facts, Warnings, worn.Value), trade.Cautions));
        count = operations => Consumables.Of(job, prepared.Surfaces, operations, prepared.Coats, Coats, worn.Value, trade.Catalogue);
    }

    /// <summary>The coats as they are put on.</summary>
    public ImmutableArray<SprayedCoat> Coats { get; }

    /// <summary>The air in the work place.</summary>
    public AirReport Air => air.GetAwaiter().GetResult();

    /// <summary>Which limits it passes.</summary>
    public ImmutableArray<Warning> Warnings => warnings.Value;

    /// <summary>What is to be told of the job, and of the air.</summary>
    public ImmutableArray<Caution> Cautions => cautions.Value;

    /// <summary>The packages of each product.</summary>
    public ImmutableArray<ProductDemand> Demand => demand.Value;

    /// <summary>What is used up besides paint. It is counted again only where something else is done around the coats than in the plan before.</summary>
    /// <param name="operations">What is done around them at one station, repeats included.</param>
    public ImmutableArray<ConsumableNeed> Besides(ImmutableArray<Operation> operations)
    {
        if (latest is { } known && known.Operations.AsSpan().SequenceEqual(operations.AsSpan(), ReferenceEqualityComparer.Instance))
            return known.Needs;

        var counted = new Counted(operations, count(operations));
        latest = counted;
        return counted.Needs;
    }

    /// <summary>Whether the coats of the same job are put on at the same times.</summary>
    public bool IsFor(ImmutableArray<PlacedCoat> others) => placed.Length == others.Length && placed.Zip(others, (one, other) => one.IsLike(other)).All(alike => alike);

    // A coat that could not be placed is breathed too, once it is put on.
    private static RespiratorKind? WornFor(AirReport air, Coats coats, Catalogue catalogue)
    {
        var labels = coats.All.Select(coat => coat.On.Label).DistinctBy(label => label.Key).ToImmutableArray();
        return RespiratorChoice.WornFor(air, labels, labels.Any(label => label.Method.Sprays), catalogue);
    }

    // What the air came to, and what is worn in it, are facts of the job like any other: cautions may follow from them.
    private static CautionFacts With(CautionFacts facts, ImmutableArray<Warning> warnings, RespiratorKind? worn) =>
        warnings
            .Where(warning => warning.Code.StartsWith(OverPrefix, StringComparison.Ordinal))
            .Select(warning => warning.Code[OverPrefix.Length..])
            .Distinct()
            .Aggregate(WithWorn(facts, worn), (known, over) => known.With(new CautionFact("over", over, "")));

    private static CautionFacts WithWorn(CautionFacts facts, RespiratorKind? worn) =>
        worn is null ? facts : facts.With(new CautionFact("respirator", worn.SuppliesAir ? "supplied-air" : "cartridges"));

    private static ImmutableArray<DatedRelease> Releases(ImmutableArray<PlacedCoat> placed, Figures figures) =>
    [
        .. placed.Where(one => one.Coat.Mass is not null).Select(one => new DatedRelease(
            one.Step, one.Start, one.End, CoatVapour.Of(one.Coat.Label, one.Coat.Mass!.Value, figures))
        {
            Product = one.Coat.Label.Key,
            Packages = one.Coat.Label.NetMass is { } net ? one.Coat.Mass.Value / net : null,
        }),
    ];

    private sealed record Counted(ImmutableArray<Operation> Operations, ImmutableArray<ConsumableNeed> Needs);
}
