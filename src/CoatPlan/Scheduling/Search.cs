using CoatPlan.Scheduling.Exact;

namespace CoatPlan.Scheduling;

/// <summary>The order in which the ways of finding a schedule are tried: priority rules, small changes, proof, and small changes again.</summary>
internal static class Search
{
    // Of the passes, this share goes before the exact search, and this share is made for the sake of the rest when the finish cannot come down.
    private const int ShareBefore = 10;

    // However large a network is, so many of the passes that follow priority rules are made.
    private const int LeastRules = 4;

    // Larger networks, or those with more pairs to order, leave the exact search no time to get anywhere.
    private const int ExactCount = 120;
    private const int ExactVariables = 5000;

    // A contradiction takes longer where there is more to look at; then fewer are worth their time.
    private const int StepsPerNode = 1000;

    public static Outcome Run(
        Frame frame, GenerationOrder order, Heads heads, int lowerBound, Effort effort, Func<Schedule, long>? preference, EarlierSchedule? earlier, CancellationToken cancel)
    {
        var local = new LocalSearch(frame, order, heads, preference, effort.Climb, cancel);
        var passes = LocalSearch.PassesFor(frame.Count, effort.Passes);
        var share = passes / ShareBefore;
        var near = earlier is null ? 0 : local.TryEarlier(earlier);
        if (local.Best?.Finish <= earlier?.Enough)
        {
            return Answer(frame, local, Verdict.Found, lowerBound);
        }

        // Small changes to what was good before are worth more than other rules.
        passes -= local.Best is null
            ? local.TryRules(Math.Min(effort.Passes, Math.Max(passes, LeastRules)))
            : near + local.TryRules(Math.Min(effort.Passes, LeastRules));

        passes -= local.Improve(Math.Min(passes, share), lowerBound);

        var isComplete = false;
        if (effort.Nodes > 0 && (local.Best is null || local.Best.Finish > lowerBound))
        {
            (isComplete, var proven) = Prove(frame, heads, local, effort.Nodes, cancel);
            lowerBound = Math.Max(lowerBound, proven);
        }

        if (isComplete && local.Best is null)
        {
            return Answer(frame, local, Verdict.Infeasible, lowerBound);
        }

        passes -= local.Improve(passes, lowerBound);
        local.Prefer();
        local.Improve(preference is null ? Math.Min(passes, share) : Math.Max(passes, share), -1);
        return Answer(
            frame,
            local,
            local.Best is null ? Verdict.NotFound : Verdict.Found,
            lowerBound);
    }

    // Whether the search came to its end, and a bound on the finish. What it found is the local search's to go on from.
    private static (bool IsComplete, int LowerBound) Prove(Frame frame, Heads heads, LocalSearch local, int nodes, CancellationToken cancel)
    {
        if (frame.Count > ExactCount || frame.HasChoices || FactsClash.In(frame))
        {
            return (false, 0);
        }

        var model = ExactModel.Of(frame, heads);
        if (model.Variables > ExactVariables)
        {
            return (false, 0);
        }

        var exact = new ExactSearch(model);
        var before = local.Best?.Finish ?? int.MaxValue;
        exact.Run(before, local.Best, nodes, (long)nodes * StepsPerNode, cancel);
        if (!exact.IsSound)
        {
            return (false, 0);
        }

        if (exact.Best is { } starts)
        {
            before = starts.Select((s, i) => model.PlacementAt(i, s).End).Max();
            if (model.IsRelaxed)
            {
                local.TryOrder(starts);
            }
            else if (ScheduleOf(frame, model, starts) is var schedule && Keeping.KeepsAll(frame, schedule))
            {
                local.Adopt(schedule);
            }
            else
            {
                // Only where a caller's function decreased after all.
                return (false, 0);
            }
        }

        // Complete, and relaxed: nothing finishes before what was found, whether or not that can be made into a schedule.
        var isComplete = exact.IsComplete && !(model.IsRelaxed && exact.Best is not null);
        return (isComplete, exact.IsComplete && before < int.MaxValue ? before : exact.LowerBound);
    }

    private static Schedule ScheduleOf(Frame frame, ExactModel model, int[] starts)
    {
        var placements = starts.Select((s, i) => model.PlacementAt(i, s)).ToArray();
        return new Schedule([.. placements], [.. frame.Links.Select(l => l.WindowHolding(placements[l.From], placements[l.To].Start))]);
    }

    private static Outcome Answer(Frame frame, LocalSearch local, Verdict verdict, int lowerBound) => local.Best is { } best
        ? new Outcome
        {
            Verdict = best.Finish <= lowerBound ? Verdict.Optimal : verdict,
            Schedule = best,
            LowerBound = Math.Min(lowerBound, best.Finish),
            Placed = [.. best.Placements.Select(p => (Placement?)p)],
        }
        : new Outcome
        {
            Verdict = verdict,
            LowerBound = lowerBound,
            Blockage = local.Blockage ?? new Blockage(frame.IdOf(0), new Reason(ReasonKind.Together), 0, frame.Horizon),
            Placed = local.Placed.IsEmpty ? [.. frame.Activities.Select(a => a.Fixed)] : local.Placed,
        };
}
