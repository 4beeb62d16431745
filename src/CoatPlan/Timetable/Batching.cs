using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Timetable;

/// <summary>Which surfaces are prepared and coated together.</summary>
/// <remarks>
/// Surfaces of one group that take the same coats are a batch, cut where a coat on all of them would take longer than its label's first window leaves, than
/// the longest working span, or where they would not fit on the rack. Surfaces that have had coats already stay with those that had the same.
/// </remarks>
internal sealed class Batching
{
    private readonly Job job;
    private readonly Sequence sequence;
    private readonly Catalogue catalogue;
    private readonly FactsDone done;
    private readonly int longestOpening;
    private readonly ImmutableDictionary<string, JobSurface> surfaces;
    private readonly ILookup<string, SurfaceCoat> coatsOf;

    public Batching(Job job, Sequence sequence, Coats coats, Catalogue catalogue, FactsDone done, int longestOpening)
    {
        this.job = job;
        this.sequence = sequence;
        this.catalogue = catalogue;
        this.done = done;
        this.longestOpening = longestOpening;
        surfaces = job.Surfaces.ToImmutableDictionary(surface => surface.Id, StringComparer.Ordinal);
        coatsOf = coats.All.ToLookup(coat => coat.Surface, StringComparer.Ordinal);
    }

    /// <summary>The batches of every station, in the order in which groups are best begun.</summary>
    public ImmutableArray<Batch> Batches(IEnumerable<int?> stations)
    {
        var cut = sequence.Groups
            .SelectMany(group => Cut(group).Select((ids, index) => (group, ids, index)))
            .ToImmutableArray();
        return [.. stations.SelectMany(station => cut.Select(part => Make(Name(part.group, part.index), station, part.group.System, part.group.Stays, part.ids)))];
    }

    /// <summary>A batch as two smaller ones; as itself where it has one surface.</summary>
    public ImmutableArray<Batch> Halve(Batch batch)
    {
        if (batch.Surfaces.Length < 2)
            return [batch];

        var half = batch.Surfaces.Length / 2;
        return
        [
            Part(batch, batch.Name + ".a", batch.Surfaces[..half]),
            Part(batch, batch.Name + ".b", batch.Surfaces[half..]),
        ];
    }

    /// <summary>Some surfaces of a batch as a batch of their own.</summary>
    public Batch Part(Batch batch, string name, ImmutableArray<string> ids) => Make(name, batch.Station, batch.System, batch.Stays, ids);

    /// <summary>A surface of a batch in a batch of its own, which keeps its name with the surface's id.</summary>
    public Batch Alone(Batch batch, string surface) => Part(batch, batch.Name + "/" + surface, [surface]);

    /// <summary>Hands-on time of a surface in its batch, opening packages left out.</summary>
    public Duration HandsOn(Batch batch, string surface) =>
        batch.Operations.SelectMany(operation => operation.Work).Where(work => work.Surface == surface).Aggregate(Duration.Zero, (sum, work) => sum + work.Hands)
        + coatsOf[surface].Aggregate(Duration.Zero, (sum, coat) => sum + coat.Hands);

    /// <summary>How long opening so many packages takes, those begun counted whole.</summary>
    public Duration Opening(CoatTask coat, double packages) => SprayTime.OfOpening(coat.Label.Method, coat.Mist, packages, catalogue);

    private static string Name(SurfaceGroup group, int index) =>
        index == 0 ? group.Id : FormattableString.Invariant($"{group.Id}-{index + 1}");

    private IEnumerable<ImmutableArray<string>> Cut(SurfaceGroup group) =>
        group.Surfaces
            .GroupBy(id => (Coats: Signature(id), History: done.HistoryOf(id)))
            .SelectMany(alike => CutAlike([.. alike], group.Stays));

    // Surfaces in a row as long as the batch keeps within its limits.
    private IEnumerable<ImmutableArray<string>> CutAlike(ImmutableArray<string> ids, bool stays)
    {
        var from = 0;
        for (var to = 1; to <= ids.Length; to++)
        {
            if (to < ids.Length && Fits(ids[from..(to + 1)], stays))
                continue;

            yield return ids[from..to];
            from = to;
        }
    }

    private bool Fits(ImmutableArray<string> ids, bool stays) =>
        (stays || job.Place.Rack is not { } rack || Pieces(ids) <= rack)
        && CoatsTogether(ids).All(coat => SprayTime.OfBatch(coat, catalogue).TotalMinutes <= Longest(coat[0].On.Label));

    // A coat is sprayed within what its label's first window leaves after waiting for the last piece, twice over for a cold garage.
    private double Longest(Label label)
    {
        var first = label.Recoat[0];
        var window = first.To is { } to ? (to - first.From - first.From).TotalMinutes : double.PositiveInfinity;
        return Math.Min(longestOpening, window > 0 ? window : double.PositiveInfinity);
    }

    private Batch Make(string name, int? station, string system, bool stays, ImmutableArray<string> ids) => new()
    {
        Name = name,
        Station = station,
        System = system,
        Stays = stays,
        Surfaces = ids,
        Pieces = Pieces(ids),
        Coats = [.. CoatsTogether(ids).Select(Task)],
        Operations = sequence.ForBatch(ids, name),
    };

    private int Pieces(ImmutableArray<string> ids) => ids.Sum(id => surfaces[id].Count);

    private IEnumerable<ImmutableArray<SurfaceCoat>> CoatsTogether(ImmutableArray<string> ids) =>
        ids.SelectMany(id => coatsOf[id])
            .GroupBy(coat => (coat.Layer, coat.Coat))
            .OrderBy(group => group.Key)
            .Select(group => group.ToImmutableArray());

    private CoatTask Task(ImmutableArray<SurfaceCoat> together) => new(
        together[0].Layer,
        together[0].Coat,
        together[0].Of,
        together[0].On.Label,
        [.. together.Select(coat => coat.Surface)],
        SprayTime.OfBatch(together, catalogue),
        together.Any(coat => coat.Volume is null) ? null : Volume.FromMilliliters(together.Sum(coat => coat.Volume!.Value.Milliliters)),
        together.Any(coat => coat.Mass is null) ? null : Mass.FromGrams(together.Sum(coat => coat.Mass!.Value.Grams)))
    {
        Packages = together.Sum(coat => coat.Packages),
        HandsOnPieces = together.Aggregate(Duration.Zero, (sum, coat) => sum + coat.Hands),
        FilmShare = done.FilmShare(together[0].On.Label, together[0].Layer, together[0].Coat, [.. together.Select(coat => coat.Surface)]),
    };

    // How many coats of which layer: surfaces that differ in it would not be coated in step.
    private string Signature(string id) => string.Join(' ', coatsOf[id].Select(coat => FormattableString.Invariant($"{coat.Layer}.{coat.Coat}")));
}
