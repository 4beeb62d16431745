using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>
/// Finds batches and gaps that can be scheduled, and among those the ones that finish earliest: the label's first windows are tried first, and where the
/// schedule cannot hold one, that gap alone moves to the next window, to the rework of a missed one, or the batch is halved.
/// </summary>
/// <remarks>Every loop is bounded by the number of gaps and batches, never by a clock.</remarks>
internal static class Arrangement
{
    // Above this a whole search for every alternative would be felt while somebody types.
    private const int SmallNetwork = 400;
    private const int MostAlternatives = 24;
    private const int LargeNetwork = 1500;

    // What the scheduling room's exact search takes on.
    private const int ExactNetwork = 120;

    // An earlier finish that nobody would notice is not looked for.
    private const int WorthLookingMinutes = 15;

    // Enough passes that more of them seldom move the finish of a job; the exact search is for small networks only.
    private static readonly Effort Whole = new(600, 5_000);
    private static readonly Effort Medium = new(200, 0);
    private static readonly Effort Alternative = new(4, 0);

    /// <summary>Arranges a job.</summary>
    public static Arranged Arrange(Draft first, Workplace place, Func<Batch, ImmutableArray<Batch>> halve, SearchDepth depth)
    {
        var found = Feasible(first, place, halve, Alternative);
        if (found.Stopped is not null || depth == SearchDepth.Quick)
            return found;

        if (MayFinishEarlier(found, first, place))
            found = Improve(found, place, halve);
        return Again(found, place, halve, depth);
    }

    /// <summary>Arranges a job once more in other air, from what was decided in the air before.</summary>
    public static Arranged Again(Arranged before, Workplace place, Func<Batch, ImmutableArray<Batch>> halve, SearchDepth depth) =>
        Feasible(before.Draft, place, halve, depth == SearchDepth.Full ? FinalEffort(before) : Alternative);

    // Against a bound that leaves every window open: other windows cannot bring in more than the distance to it.
    private static bool MayFinishEarlier(Arranged found, Draft first, Workplace place) =>
        found.Drawn.Nodes.Length <= SmallNetwork
        && found.Outcome.Schedule!.Finish - Scheduler.Schedule(Relaxation.Of(first, place), Effort.Draft).LowerBound > WorthLookingMinutes;

    private static Effort FinalEffort(Arranged found) =>
        found.Drawn.Nodes.Length switch
        {
            <= ExactNetwork => Whole,
            <= LargeNetwork => Medium,
            _ => Alternative,
        };

    private static Arranged Feasible(Draft draft, Workplace place, Func<Batch, ImmutableArray<Batch>> halve, Effort effort)
    {
        var tries = 8 + 4 * draft.Batches.Sum(batch => batch.Coats.Length + batch.Surfaces.Length);
        while (true)
        {
            var drawn = NetworkDrawing.Draw(draft, place);
            var outcome = Scheduler.Schedule(drawn.Network, effort);
            var next = outcome.Schedule is { } schedule
                ? GapMending.Rested(draft, drawn, schedule)
                : Mend(draft, drawn, outcome.Blockage, place, halve);
            if (next is null || tries-- == 0)
                return outcome.Schedule is null ? PartOfJob.Of(draft, drawn, outcome) : new Arranged(draft, drawn, outcome, null);
            draft = next;
        }
    }

    private static Draft? Mend(Draft draft, WorkNetwork drawn, Blockage? blockage, Workplace place, Func<Batch, ImmutableArray<Batch>> halve)
    {
        var node = blockage is null ? null : drawn.Nodes.FirstOrDefault(node => node.Id == blockage.Activity);
        if (node?.Batch is not { } batch)
            return WithTightestMoved(draft, place);

        var b = draft.Batches.IndexOf(batch);
        if (node.Activity.Work > place.LongestOpening && !node.Activity.Breakable || blockage!.Reason.Kind == ReasonKind.Capacity)
            return Halved(draft, b, halve);
        if (node.Operation?.Word is "unmask" or "remask" && WithTapeOff(draft, b, place) is { } untaped)
            return untaped;

        var gap = node.Coat is { } coat ? batch.Coats.IndexOf(coat) - 1 : -1;
        return (gap >= 0 ? Moved(draft, b, gap, place) : null)
            ?? Enumerable.Range(0, draft.Gaps[b].Length).Select(other => Moved(draft, b, other, place)).FirstOrDefault(moved => moved is not null)
            ?? WithTapeOff(draft, b, place)
            ?? Halved(draft, b, halve)
            ?? WithTightestMoved(draft, place);
    }

    // Where the step that found no time is not the one whose window closes, the narrowest window of all is the likeliest cause.
    private static Draft? WithTightestMoved(Draft draft, Workplace place) =>
        draft.Batches
            .SelectMany((batch, b) => Enumerable.Range(0, draft.Gaps[b].Length).Select(gap => (batch, b, gap)))
            .Where(at => !draft.Gaps[at.b][at.gap].Reworked)
            .Select(at => (at.b, at.gap, Window: BatchDrawing.WindowsBetween(at.batch.Coats[at.gap], at.batch.Coats[at.gap + 1])[draft.Gaps[at.b][at.gap].Window]))
            .Where(at => at.Window.To is not null)
            .OrderBy(at => at.Window.To!.Value - at.Window.From)
            .Select(at => Moved(draft, at.b, at.gap, place))
            .FirstOrDefault(moved => moved is not null);

    private static Draft? Moved(Draft draft, int batch, int gap, Workplace place) =>
        GapMending.Next(draft.Batches[batch], gap, draft.Gaps[batch][gap], place) is { } next ? draft.With(batch, gap, next) : null;

    // Tape comes off at the longest gap that still has it on.
    private static Draft? WithTapeOff(Draft draft, int b, Workplace place)
    {
        var batch = draft.Batches[b];
        if (!GapMending.IsMasked(batch))
            return null;

        var taped = Enumerable.Range(0, draft.Gaps[b].Length)
            .Where(gap => !draft.Gaps[b][gap].Unmasked)
            .OrderByDescending(gap => WaitOf(batch, gap, draft.Gaps[b][gap]))
            .ToArray();
        return taped.Length == 0 ? null : draft.With(b, taped[0], draft.Gaps[b][taped[0]] with { Rested = true, Unmasked = true });
    }

    private static Duration WaitOf(Batch batch, int gap, GapChoice choice) =>
        choice.Reworked
            ? batch.Coats[gap].Label.Times.Through
            : BatchDrawing.WindowsBetween(batch.Coats[gap], batch.Coats[gap + 1])[choice.Window].From;

    private static Draft? Halved(Draft draft, int b, Func<Batch, ImmutableArray<Batch>> halve)
    {
        var halves = halve(draft.Batches[b]);
        return halves.Length < 2
            ? null
            : new Draft(
                draft.Batches.RemoveAt(b).InsertRange(b, halves),
                draft.Gaps.RemoveAt(b).InsertRange(b, Draft.Of(halves).Gaps));
    }

    // Whether a layer is better spread over the label's later windows is tried layer by layer, and kept where the job finishes earlier.
    private static Arranged Improve(Arranged found, Workplace place, Func<Batch, ImmutableArray<Batch>> halve)
    {
        var best = found;
        foreach (var alternative in Alternatives(found.Draft, place).Take(MostAlternatives))
        {
            var tried = Feasible(alternative(best.Draft), place, halve, Alternative);
            if (tried.Stopped is null && tried.Outcome.Schedule is { } schedule && schedule.Finish < best.Outcome.Schedule!.Finish)
                best = tried;
        }

        return best;
    }

    private static IEnumerable<Func<Draft, Draft>> Alternatives(Draft draft, Workplace place)
    {
        for (var b = 0; b < draft.Batches.Length; b++)
        {
            var batch = draft.Batches[b];
            foreach (var layer in batch.Coats.Select(coat => coat.Layer).Distinct())
            {
                var gaps = Enumerable.Range(0, batch.Coats.Length - 1).Where(gap => batch.Coats[gap].Layer == layer).ToArray();
                if (gaps.Length == 0)
                    continue;

                var widest = gaps.Max(gap => BatchDrawing.WindowsBetween(batch.Coats[gap], batch.Coats[gap + 1]).Length);
                for (var window = 1; window < widest; window++)
                {
                    var (key, chosen) = (batch.Key, window);
                    yield return now => Spread(now, key, gaps, chosen, place);
                }
            }
        }
    }

    private static Draft Spread(Draft draft, string key, int[] gaps, int window, Workplace place)
    {
        for (var b = 0; b < draft.Batches.Length; b++)
        {
            var batch = draft.Batches[b];
            if (batch.Key != key)
                continue;

            foreach (var gap in gaps)
            {
                var windows = BatchDrawing.WindowsBetween(batch.Coats[gap], batch.Coats[gap + 1]);
                var index = Math.Min(window, windows.Length - 1);
                draft = draft.With(b, gap, GapMending.InWindow(index, windows[index].From, batch, place));
            }
        }

        return draft;
    }
}
