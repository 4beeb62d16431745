using CoatPlan.Plans;

namespace CoatPlan.App.Screens;

/// <summary>What a plan puts on the lanes of the timeline: work, waits, windows.</summary>
internal static class TimelineLanes
{
    /// <summary>How many stations have lanes of their own; 1 where there is but one.</summary>
    /// <param name="plan">The plan.</param>
    public static int Stations(Plan plan) => Math.Max(1, plan.Stations);

    /// <summary>Work with the hands; what overlaps goes on lanes of its own, and so does each station.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="chosen">The chosen step; null for none.</param>
    public static ImmutableArray<TimelineBar> Work(Plan plan, PlanStep? chosen)
    {
        var free = new List<LocalDateTime>();
        var bars = ImmutableArray.CreateBuilder<TimelineBar>();
        var stations = Stations(plan);
        var second = false;
        foreach (var step in plan.Steps.OrderBy(step => step.Start))
        {
            var (glyph, ink) = Look(step, second);
            second = !second;
            var lane = stations > 1 ? (step.Station ?? 1) - 1 : LaneFor(free, step.Start, step.End);
            foreach (var (from, to) in WorkedPieces(plan, step))
                bars.Add(new TimelineBar(from, to, lane, glyph, ink, step.Kind, step == chosen));
        }

        return [.. bars.OrderBy(bar => bar.Chosen)];
    }

    /// <summary>What dries or settles by itself, up to the last state that a later step waits for; with stations, all of them on one lane.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="chosen">The chosen step; null for none.</param>
    public static ImmutableArray<TimelineBar> Waits(Plan plan, PlanStep? chosen)
    {
        var stations = Stations(plan);
        var free = new List<LocalDateTime>();
        var bars = ImmutableArray.CreateBuilder<TimelineBar>();
        foreach (var step in plan.Steps.OrderBy(step => step.End))
        {
            var least = plan.Steps.SelectMany(later => later.After).Where(wait => wait.Step == step.Id).Max(wait => wait.LeastMin) ?? 0;
            if (least <= 0)
                continue;

            var to = step.End.PlusMinutes((long)Math.Ceiling(least));
            bars.Add(new TimelineBar(step.End, to, stations > 1 ? 0 : LaneFor(free, step.End, to), '~', Ink.Drying, "", step == chosen));
        }

        return [.. bars.OrderBy(bar => bar.Chosen)];
    }

    /// <summary>Between the earliest start that its waits allow and the last safe one: when a coat may start; with stations, all of them on one lane.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="chosen">The chosen step; null for none.</param>
    public static ImmutableArray<TimelineBar> Windows(Plan plan, PlanStep? chosen)
    {
        var stations = Stations(plan);
        var ends = plan.Steps.ToDictionary(step => step.Id, step => step.End, StringComparer.Ordinal);
        var free = new List<LocalDateTime>();
        var bars = ImmutableArray.CreateBuilder<TimelineBar>();
        foreach (var step in plan.Steps.OrderBy(step => step.Start))
        {
            if (step.LastSafeStart is not { } last)
                continue;

            var from = step.After
                .Where(wait => ends.ContainsKey(wait.Step))
                .Select(wait => ends[wait.Step].PlusMinutes((long)Math.Ceiling(wait.LeastMin ?? 0)))
                .DefaultIfEmpty(step.Start)
                .Max();
            from = from > step.Start ? step.Start : from;
            bars.Add(new TimelineBar(from, last, stations > 1 ? 0 : LaneFor(free, from, last), '=', Ink.Window, "", step == chosen));
        }

        return [.. bars.OrderBy(bar => bar.Chosen)];
    }

    // A step that was broken off at the end of a span is not worked on in between.
    private static List<(LocalDateTime From, LocalDateTime To)> WorkedPieces(Plan plan, PlanStep step)
    {
        var pieces = plan.OpenHours
            .Select(span => (From: Later(span.From, step.Start), To: Earlier(span.To, step.End)))
            .Where(piece => piece.From < piece.To)
            .ToList();
        return pieces.Count > 0 ? pieces : [(step.Start, step.End)];
    }

    private static (char Glyph, Ink Ink) Look(PlanStep step, bool second) => step switch
    {
        { Spray: true } => ('█', Ink.Spray),
        { MakesDust: true } => ('░', Ink.Hands),
        // Neighbours differ, so that one can see where a step ends.
        _ => (second ? '▓' : '▒', Ink.Hands),
    };

    private static int LaneFor(List<LocalDateTime> free, LocalDateTime from, LocalDateTime to)
    {
        var lane = free.FindIndex(end => end <= from);
        if (lane < 0)
        {
            lane = free.Count;
            free.Add(to);
        }

        free[lane] = to;
        return lane;
    }

    private static LocalDateTime Later(LocalDateTime a, LocalDateTime b) => a > b ? a : b;

    private static LocalDateTime Earlier(LocalDateTime a, LocalDateTime b) => a < b ? a : b;
}
