using CoatPlan.Climate;
using CoatPlan.Presets;

namespace CoatPlan.Timetable;

/// <summary>Arranges a job whose heater must be off while there is vapour: the hours off follow from the schedule and the schedule from them.</summary>
internal sealed class OpenHeater
{
    // Hours only come on from round to round, so that a few rounds settle it, or the heater counts as off throughout.
    private const int Rounds = 6;

    private readonly Arrangement arrangement;
    private readonly PlaceClimate climate;
    private readonly Catalogue catalogue;
    private readonly SearchDepth depth;

    /// <summary>Nothing is arranged yet.</summary>
    /// <param name="arrangement">Arranges a job in given air.</param>
    /// <param name="climate">The air of the place, its heater on.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="depth">How far to search.</param>
    public OpenHeater(Arrangement arrangement, PlaceClimate climate, Catalogue catalogue, SearchDepth depth)
    {
        this.arrangement = arrangement;
        this.climate = climate;
        this.catalogue = catalogue;
        this.depth = depth;
    }

    /// <summary>Arranges a job, with the heater off where it must be; as it is where there is no open heater.</summary>
    /// <param name="first">The batches as they are best begun with.</param>
    /// <param name="place">What the network is drawn from.</param>
    /// <param name="baseline">How the job was arranged before a change, from which a quick search begins; null for none.</param>
    public HeatedJob Arrange(ImmutableArray<Batch> first, Workplace place, Baseline? baseline)
    {
        var arranged = baseline is not null && depth == SearchDepth.Quick ? arrangement.Near(baseline, first, place) : arrangement.Arrange(first, place, depth);
        if (!climate.HasOpenHeater)
            return new HeatedJob(arranged, place, []);

        var offs = Needed(arranged, place);
        HeatedJob? best = null;
        for (var round = 0; round < Rounds; round++)
        {
            place = WithOffs(place, offs);
            arranged = arrangement.Shifted(arranged, place);
            if (HeaterHours.Cover(offs, Needed(arranged, place)))
            {
                if (best is null || IsBetter(arranged, best.Arranged))
                    best = new HeatedJob(arranged, place, offs);
                // A few passes found hours that hold; the whole search may find a better plan that keeps to them, or one worth hours of its own.
                if (depth == SearchDepth.Quick || arrangement.Again(arranged, place, depth) is not { } whole || !IsBetter(whole, best.Arranged))
                    break;
                arranged = whole;
                if (HeaterHours.Cover(offs, Needed(whole, place)))
                {
                    best = new HeatedJob(whole, place, offs);
                    break;
                }
            }

            offs = HeaterHours.Union(offs, Needed(arranged, place));
        }

        if (best is not null)
            return OffOnlyWhereItMust(best);

        var never = new HeaterOff(offs.IsEmpty ? 0 : offs.Min(off => off.From));
        place = WithOffs(place, [never]);
        return new HeatedJob(arrangement.Again(arranged, place, depth), place, [never]);
    }

    // The hours hold the spraying of rounds that were given up too: without those it is warmer, and the plan still holds or is better.
    private HeatedJob OffOnlyWhereItMust(HeatedJob job)
    {
        for (var round = 0; round < Rounds; round++)
        {
            var own = HeaterHours.Union([], Needed(job.Arranged, job.Place));
            if (own.SequenceEqual(job.Offs))
                break;
            var place = WithOffs(job.Place, own);
            var arranged = arrangement.Shifted(job.Arranged, place);
            if (arranged.Stopped is not null || IsBetter(job.Arranged, arranged) || !HeaterHours.Cover(own, Needed(arranged, place)))
                break;
            job = new HeatedJob(arranged, place, own);
        }

        return job;
    }

    private Workplace WithOffs(Workplace place, ImmutableArray<HeaterOff> offs) =>
        place with { AirAround = new AirAround(new SurfaceAirs(climate.WithHeaterOff(offs)), place.Job, catalogue) };

    private static bool IsBetter(Arranged one, Arranged other) =>
        one.Stopped is null && (other.Stopped is not null || Arrangement.Finish(one) < Arrangement.Finish(other));

    // From the start of each coat until its film can be touched and the air is clear.
    private static ImmutableArray<HeaterOff> Needed(Arranged arranged, Workplace place) =>
    [
        .. arranged.Drawn.Nodes
            .Select((node, index) => (node, at: arranged.Outcome.Placed[index]))
            .Where(pair => pair.node.Coat is not null && pair.at is not null)
            .OrderBy(pair => pair.at!.Value.Start)
            .Select(pair => new HeaterOff(
                pair.at!.Value.Start,
                place.AirAround.Of(pair.node.Coat!.Surfaces).Reaches(pair.node.Coat, FilmStage.Touch, pair.at.Value.End) + place.ClearingMinutes)),
    ];
}
