using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Prep;
using CoatPlan.Presets;

namespace CoatPlan.Timetable;

/// <summary>When each operation and coat of a job is done.</summary>
internal static class Timetabling
{
    // An open heater's hours off follow from the schedule and the schedule from them. Hours only come on from round to round, so that a few rounds settle it,
    // or the heater counts as off throughout.
    private const int HeaterRounds = 6;

    /// <summary>Dates a job that was arranged.</summary>
    /// <param name="settled">The job.</param>
    internal static DatedJob Date(Settled settled)
    {
        var (arranged, place) = (settled.Arranged, settled.Place);
        var steps = Dating.Steps(arranged, place);
        var finish = steps.IsEmpty ? (LocalDateTime?)null : steps.Max(step => step.End);
        var whole = arranged.Stopped is null;
        var coats = steps.Where(step => step.ServiceAt is not null).ToArray();
        return new DatedJob
        {
            Steps = steps,
            Finish = finish,
            InService = whole && coats.Length > 0 ? coats.Max(step => step.ServiceAt) : null,
            LowerBound = finish is { } end ? LocalDateTime.Min(place.Clock.At(settled.Bound()), end) : null,
            Reasons = Reasons(arranged, place, finish),
            Idle = IdleHours.Of(arranged, steps, place),
            RestPoints = RestPoints.Of(arranged, steps, place),
            Spans = Spans(place, finish),
        };
    }

    /// <summary>Arranges a job, before it is put into dates: what else asks after a job's network, such as a chance, takes it from here.</summary>
    /// <param name="job">The job.</param>
    /// <param name="sequence">What is done around its coats.</param>
    /// <param name="coats">Its coats.</param>
    /// <param name="air">The air it is done in.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="depth">How far to search.</param>
    /// <param name="baseline">How the job was arranged before a change, from which a quick search begins; null for none.</param>
    /// <param name="cancel">Ends a search whose answer is no longer wanted.</param>
    internal static Settled Settle(
        Job job, Sequence sequence, Coats coats, AirAround air, Catalogue catalogue, SearchDepth depth, Baseline? baseline = null, CancellationToken cancel = default)
    {
        var clock = new Clock(job.Start);
        var hours = CrewHours.Of(job.Crew, clock);
        var longest = hours.Openings.Select(opening => opening.Closes - opening.Opens).DefaultIfEmpty(0).Max();
        var done = FactsDone.Of(job, clock);
        var batching = new Batching(job, sequence, coats, catalogue, done, longest);
        var place = new Workplace
        {
            Job = job,
            Clock = clock,
            Hours = hours,
            LongestOpening = longest,
            Sequence = sequence,
            Done = done,
            AirAround = air,
            ClearingMinutes = 0,
            WipeHoldsMinutes = (int)catalogue.Figures.Time("wipe-holds").TotalMinutes,
            LeastBeforeUnmaskMinutes = (int)catalogue.Figures.Time("unmask-after").TotalMinutes,
        };
        var first = batching.Batches(place.Stations);
        place = place with { ClearingMinutes = PurgeTimes.ClearingMinutes(job, first.SelectMany(batch => batch.Coats), catalogue) };

        var (arranged, settled, offs) = WithHeater(first, place, batching, air.Climate, catalogue, depth, baseline, cancel);
        return new Settled(arranged, settled, offs) { Bound = () => depth == SearchDepth.Quick ? FinishBound.OfHands(first, place) : FinishBound.Of(first, batching, place) };
    }

    private static HeatedJob WithHeater(
        ImmutableArray<Batch> first, Workplace place, Batching batching, PlaceClimate climate, Catalogue catalogue, SearchDepth depth, Baseline? baseline, CancellationToken cancel)
    {
        var arrangement = new Arrangement(batching, cancel);
        var arranged = baseline is not null && depth == SearchDepth.Quick ? arrangement.Near(baseline, first, place) : arrangement.Arrange(first, place, depth);
        if (!climate.HasOpenHeater)
            return new HeatedJob(arranged, place, []);

        var offs = HeaterOffs(arranged, place);
        HeatedJob? best = null;
        for (var round = 0; round < HeaterRounds; round++)
        {
            place = WithOffs(place, climate, offs, catalogue);
            arranged = arrangement.Shifted(arranged, place);
            if (HeaterHours.Cover(offs, HeaterOffs(arranged, place)))
            {
                if (best is null || IsBetter(arranged, best.Arranged))
                    best = new HeatedJob(arranged, place, offs);
                // A few passes found hours that hold; the whole search may find a better plan that keeps to them, or one worth hours of its own.
                if (depth == SearchDepth.Quick || arrangement.Again(arranged, place, depth) is not { } whole || !IsBetter(whole, best.Arranged))
                    break;
                arranged = whole;
                if (HeaterHours.Cover(offs, HeaterOffs(whole, place)))
                {
                    best = new HeatedJob(whole, place, offs);
                    break;
                }
            }

            offs = HeaterHours.Union(offs, HeaterOffs(arranged, place));
        }

        if (best is not null)
            return OffOnlyWhereItMust(best, arrangement, climate, catalogue);

        var never = new HeaterOff(offs.IsEmpty ? 0 : offs.Min(off => off.From));
        place = WithOffs(place, climate, [never], catalogue);
        return new HeatedJob(arrangement.Again(arranged, place, depth), place, [never]);
    }

    // The hours hold the spraying of rounds that were given up too: without those it is warmer, and the plan still holds or is better.
    private static HeatedJob OffOnlyWhereItMust(HeatedJob job, Arrangement arrangement, PlaceClimate climate, Catalogue catalogue)
    {
        for (var round = 0; round < HeaterRounds; round++)
        {
            var own = HeaterHours.Union([], HeaterOffs(job.Arranged, job.Place));
            if (own.SequenceEqual(job.Offs))
                break;
            var place = WithOffs(job.Place, climate, own, catalogue);
            var arranged = arrangement.Shifted(job.Arranged, place);
            if (arranged.Stopped is not null || IsBetter(job.Arranged, arranged) || !HeaterHours.Cover(own, HeaterOffs(arranged, place)))
                break;
            job = new HeatedJob(arranged, place, own);
        }

        return job;
    }

    private static Workplace WithOffs(Workplace place, PlaceClimate climate, ImmutableArray<HeaterOff> offs, Catalogue catalogue) =>
        place with { AirAround = new AirAround(new SurfaceAirs(climate.WithHeaterOff(offs)), place.Job, catalogue) };

    private static bool IsBetter(Arranged one, Arranged other) =>
        one.Stopped is null && (other.Stopped is not null || Arrangement.Finish(one) < Arrangement.Finish(other));

    private static ImmutableArray<HeaterOff> HeaterOffs(Arranged arranged, Workplace place) =>
    [
        .. arranged.Drawn.Nodes
            .Select((node, index) => (node, at: arranged.Outcome.Placed[index]))
            .Where(pair => pair.node.Coat is not null && pair.at is not null)
            .OrderBy(pair => pair.at!.Value.Start)
            .Select(pair => new HeaterOff(
                pair.at!.Value.Start,
                place.AirAround.Of(pair.node.Coat!.Surfaces).Reaches(pair.node.Coat, FilmStage.Touch, pair.at.Value.End) + place.ClearingMinutes)),
    ];

    private static ImmutableArray<string> Reasons(Arranged arranged, Workplace place, LocalDateTime? finish)
    {
        if (arranged.Stopped is { } stop)
        {
            return
            [
                stop.Blockage is { } blockage
                    ? WaitWords.Of(blockage, stop.Whole, place)
                    : "No order of the steps meets windows, working hours and air within 60 days from the start.",
            ];
        }

        return finish is { } end && place.Job.FinishBy is { } asked && end > asked ? [WaitWords.Late(end, asked)] : [];
    }

    private static ImmutableArray<(LocalDateTime From, LocalDateTime To)> Spans(Workplace place, LocalDateTime? finish)
    {
        var until = (finish ?? place.Job.Start).PlusDays(1);
        return
        [
            .. CrewHours.Spans(place.Job.Crew, place.Clock)
                .Select(span => (place.Clock.At(span.From), place.Clock.At(span.To)))
                .Where(span => span.Item1 < until),
        ];
    }

    // A job arranged with the hours in which its heater is off.
    private sealed record HeatedJob(Arranged Arranged, Workplace Place, ImmutableArray<HeaterOff> Offs);
}
