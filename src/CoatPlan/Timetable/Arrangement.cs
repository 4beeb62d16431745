using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>Finds batches that can be scheduled, and among those the ones that finish earliest: a batch that finds no time is halved, others on trial.</summary>
/// <remarks>Every loop is bounded by the number of batches, never by a clock.</remarks>
internal sealed class Arrangement
{
    // Above this a whole search for every alternative would be felt while somebody types.
    private const int SmallNetwork = 400;
    private const int MostAlternatives = 24;
    private const int LargeNetwork = 1500;

    // Some jobs that can be finished in time are so in one search of two, some in one of four.
    private const int MostClimbs = 8;

    // An earlier finish that nobody would notice is not looked for.
    private const int WorthLookingMinutes = 15;

    // Enough passes that more of them seldom move the finish of a job.
    private static readonly Effort Whole = new(4_000, 5_000);
    private static readonly Effort Medium = new(200, 0);
    private static readonly Effort Alternative = new(11, 0);

    private static readonly Effort Persistent = new(600, 0);

    // After a change: the orders near what was there before, a few others, and some small changes.
    private static readonly Effort Nearby = new(13, 0);

    // Which batches are worth halving looks different after a few passes than after many; both answers are searched in full, and the better one stays.
    private static readonly ImmutableArray<Effort> Trials = [Alternative, new(150, 0)];

    private readonly Batching batching;
    private readonly CancellationToken cancel;

    /// <summary>Nothing is arranged yet.</summary>
    /// <param name="batching">Halves batches.</param>
    /// <param name="cancel">Ends a search whose answer is no longer wanted.</param>
    public Arrangement(Batching batching, CancellationToken cancel)
    {
        this.batching = batching;
        this.cancel = cancel;
    }

    /// <summary>Arranges a job.</summary>
    public Arranged Arrange(ImmutableArray<Batch> first, Workplace place, SearchDepth depth)
    {
        var found = Feasible(first, place, Alternative);
        // Nobody is told that there is no plan before more than a few orders were tried.
        if (found.Stopped is not null && depth == SearchDepth.Full && Feasible(first, place, Persistent) is { Stopped: null } late)
            found = late;
        if (found.Stopped is not null || depth == SearchDepth.Quick || FinalEffort(found) == Alternative)
            return found;

        var improved = Trials.AsParallel().AsOrdered().WithCancellation(cancel).Select(trial => Improve(found, place, trial)).ToArray();
        var searched = improved.OrderBy(Finish).DistinctBy(arranged => Division(arranged.Batches)).ToArray()
            .AsParallel().AsOrdered().WithCancellation(cancel).Select(arranged => InFull(arranged, place)).ToArray();
        return ByFinishAsked(searched.MinBy(Finish)!, place);
    }

    // Before somebody is told that there is no plan by the finish asked for, the search goes other ways too; two at a time, so that no clock decides which.
    private Arranged ByFinishAsked(Arranged best, Workplace place)
    {
        for (var climb = 1; climb < MostClimbs && best.Drawn.Nodes.Length <= SmallNetwork && IsLate(best, place); climb += 2)
        {
            var (from, effort) = (best, FinalEffort(best));
            best = new[] { climb, climb + 1 }.AsParallel().AsOrdered().WithCancellation(cancel)
                .Select(each => Feasible(from.Batches, place, effort with { Climb = each })).ToArray()
                .Where(climbed => climbed.Stopped is null)
                .Prepend(best)
                .MinBy(Finish)!;
        }

        return best;
    }

    private static bool IsLate(Arranged placed, Workplace place) =>
        place.Job.FinishBy is { } asked && place.Clock.At(Finish(placed)) > asked && place.Clock.At(placed.Outcome.LowerBound) <= asked;

    /// <summary>Arranges a job at once after a change, from where it was before; as if there had been no plan before where that leads nowhere.</summary>
    public Arranged Near(Baseline baseline, ImmutableArray<Batch> first, Workplace place)
    {
        var found = Feasible(baseline.Divided(first, batching.Part), place, Nearby, drawn => baseline.In(drawn, place.Clock, WorthLookingMinutes));
        return found.Stopped is null ? found : Arrange(first, place, SearchDepth.Quick);
    }

    /// <summary>Arranges a job once more in other air, with the batches of the air before.</summary>
    public Arranged Again(Arranged before, Workplace place, SearchDepth depth) =>
        Feasible(before.Batches, place, depth == SearchDepth.Full ? FinalEffort(before) : Alternative);

    /// <summary>Arranges a job once more in other air, with the batches and near the order of the air before.</summary>
    public Arranged Shifted(Arranged before, Workplace place) =>
        Feasible(before.Batches, place, Nearby, before.OpenSchedule is null ? null : drawn => OrderOf(before, drawn));

    // A search from other batches' beginning may come out behind what was found on the way there.
    private Arranged InFull(Arranged improved, Workplace place)
    {
        var whole = Again(improved, place, SearchDepth.Full);
        return whole.Stopped is null && Finish(whole) <= Finish(improved) ? whole : improved;
    }

    /// <summary>The minute at which the schedule of a job that was placed finishes.</summary>
    public static int Finish(Arranged placed) => placed.Outcome.Schedule!.Finish;

    // Which surfaces go together.
    private static string Division(ImmutableArray<Batch> batches) => string.Join('\n', batches.Select(batch => string.Join('\t', batch.Surfaces.Prepend(batch.Name))));

    private static Effort FinalEffort(Arranged found) =>
        found.Drawn.Nodes.Length switch
        {
            <= SmallNetwork => Whole,
            <= LargeNetwork => Medium,
            _ => Alternative,
        };

    private Arranged Feasible(ImmutableArray<Batch> batches, Workplace place, Effort effort, Func<WorkNetwork, EarlierSchedule>? earlier = null)
    {
        while (true)
        {
            var drawn = NetworkDrawing.Draw(batches, place);
            var outcome = Scheduler.Schedule(drawn.Network, effort, Preference.Of(drawn, place), earlier?.Invoke(drawn), cancel);
            if (outcome.Schedule is { } schedule)
                return Arranged.On(batches, drawn, outcome, null) with { Open = drawn, OpenSchedule = schedule };

            if (outcome.Blockage is not { } blockage || Smaller(batches, drawn, blockage, place) is not { } smaller)
                return PartOfJob.Of(batches, drawn, outcome);
            batches = smaller;
        }
    }

    private static EarlierSchedule OrderOf(Arranged before, WorkNetwork drawn)
    {
        var began = before.Drawn.Nodes.Select((node, at) => (node.Id, before.Outcome.Placed[at]?.Start)).ToDictionary(each => each.Id, each => each.Start, StringComparer.Ordinal);
        return new EarlierSchedule([.. drawn.Nodes.Select(node => began.GetValueOrDefault(node.Id))], Finish(before));
    }

    // The batch that finds no time in two; or every batch, where some step finds no time before the calendar ends, for which coats may be to blame that each fit
    // an opening alone but not two at their distance.
    private ImmutableArray<Batch>? Smaller(ImmutableArray<Batch> batches, WorkNetwork drawn, Blockage blockage, Workplace place)
    {
        var node = drawn.Find(blockage.Activity);
        if (node?.Batch is { } batch && WouldSmallerFit(node, blockage, place))
            return Halved(batches, batch);

        return blockage.Reason.Kind is ReasonKind.Hours or ReasonKind.Horizon && !place.Hours.Openings.IsEmpty && drawn.Nodes.Length <= SmallNetwork
            && batches.Any(batch => batch.Surfaces.Length > 1)
            ? [.. batches.SelectMany(batch => batching.Halve(batch))]
            : null;
    }

    // Less at a time helps where a step is too long for an opening, a warm spell or a window, not where the job is too long for the calendar.
    private static bool WouldSmallerFit(WorkNode node, Blockage blockage, Workplace place) => blockage.Reason.Kind switch
    {
        ReasonKind.Hours => node.Activity.Work > place.LongestOpening && !node.Activity.Breakable,
        ReasonKind.Capacity or ReasonKind.StartRule or ReasonKind.MostWait or ReasonKind.Together => true,
        _ => false,
    };

    private ImmutableArray<Batch>? Halved(ImmutableArray<Batch> batches, Batch batch)
    {
        var halves = batching.Halve(batch);
        var at = batches.IndexOf(batch);
        return halves.Length < 2 ? null : batches.RemoveAt(at).InsertRange(at, halves);
    }

    // Smaller batches are tried one after the other, and kept where the job finishes earlier.
    private Arranged Improve(Arranged found, Workplace place, Effort trial)
    {
        if (found.Drawn.Nodes.Length > SmallNetwork)
            return found;
        var best = trial == Alternative ? found : Feasible(found.Batches, place, trial);
        if (best.Stopped is not null)
            return found;

        foreach (var batch in found.Batches.Where(batch => batch.Surfaces.Length > 1).Take(MostAlternatives))
        {
            if (!MayFinishEarlier(best))
                break;
            if (Halved(best.Batches, batch) is not { } smaller)
                continue;

            var tried = Feasible(smaller, place, trial);
            if (tried.Stopped is null && Finish(tried) < Finish(best))
                best = tried;
        }

        return best;
    }

    private static bool MayFinishEarlier(Arranged found) => Finish(found) - found.Outcome.LowerBound > WorthLookingMinutes;
}
