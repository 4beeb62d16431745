using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>The days of a plan with what happens on each.</summary>
internal static class TimelineDays
{
    private const string WholeJob = "whole job";

    private const int MostNames = 2;

    public static ImmutableArray<TimelineDay> Of(Plan plan, PlanWords words)
    {
        var lanes = Lanes(plan, words);
        var first = plan.Steps.Min(step => step.Start).Date;
        var last = plan.Steps.Max(step => step.End).Date;
        var days = ImmutableArray.CreateBuilder<TimelineDay>();
        for (var day = first; day <= last; day = day.PlusDays(1))
        {
            var end = day;
            while (end <= last && !IsWorked(lanes, end))
                end = end.PlusDays(1);
            if (end == day)
            {
                days.Add(Worked(day, plan, lanes, words));
                continue;
            }

            days.Add(Idle(day, end.PlusDays(-1)));
            day = end.PlusDays(-1);
        }

        return days.ToImmutable();
    }

    private static bool IsWorked(ImmutableArray<Lane> lanes, LocalDate day) =>
        lanes.Any(lane => lane.Bars.Any(bar => bar.Kind is not (TimelineKind.Wait or TimelineKind.Window) && OnDay(bar.From, bar.To, day) is not null));

    private static TimelineDay Idle(LocalDate from, LocalDate to) => new(
        from, $"{(from == to ? PlanWords.Day(from) : $"{PlanWords.Day(from)} to {PlanWords.Day(to)}")}: no work", [], [], [], []);

    private static TimelineDay Worked(LocalDate day, Plan plan, ImmutableArray<Lane> lanes, PlanWords words)
    {
        ImmutableArray<TimelineAir> air = [.. plan.AirHours.Where(one => one.At >= day.AtMidnight() && one.At <= day.PlusDays(1).AtMidnight()).Select(one => Air(one, words))];
        return new TimelineDay(
            day,
            PlanWords.Day(day),
            [.. plan.OpenHours.Select(span => OnDay(span.From, span.To, day)).OfType<PlanSpan>()],
            [.. OnDay(lanes, day)],
            air,
            air.IsEmpty ? [] : [words.Range(air.Select(one => one.AirC)), words.Range(air.Select(one => one.MetalC)), words.Range(air.Select(one => one.DewPointC))]);
    }

    private static TimelineAir Air(PlanAirAt one, PlanWords words) => new(
        one.At, one.AirC, one.SurfaceC, one.DewPointC, words.Degrees(one.AirC), words.Degrees(one.SurfaceC), words.Degrees(one.DewPointC));

    // Stations that do the same at the same time share a lane.
    private static IEnumerable<TimelineLane> OnDay(ImmutableArray<Lane> lanes, LocalDate day) =>
        lanes.Select(lane => (lane.Title, lane.Station, Bars: OnDay(lane, day)))
            .Where(lane => !lane.Bars.IsEmpty)
            .GroupBy(lane => (lane.Title, Key: string.Join('|', lane.Bars.Select(bar => $"{bar.From:R} {bar.To:R} {bar.Kind} {bar.Texts.FirstOrDefault()}"))))
            .Select(same => new TimelineLane(StationWords.After(same.Key.Title, same.Select(lane => lane.Station)), same.First().Bars));

    private static ImmutableArray<TimelineBar> OnDay(Lane lane, LocalDate day) =>
    [
        .. lane.Bars
            .Select(bar => OnDay(bar.From, bar.To, day) is { } span ? bar with { From = span.From, To = span.To } : null)
            .OfType<TimelineBar>(),
    ];

    private static PlanSpan? OnDay(LocalDateTime from, LocalDateTime to, LocalDate day)
    {
        var (start, end) = (LocalDateTime.Max(from, day.AtMidnight()), LocalDateTime.Min(to, day.PlusDays(1).AtMidnight()));
        return start < end || (start == end && from == to && from.Date == day) ? new PlanSpan(start, end) : null;
    }

    private static ImmutableArray<Lane> Lanes(Plan plan, PlanWords words)
    {
        var ends = plan.Steps.ToDictionary(step => step.Id, step => step.End, StringComparer.Ordinal);
        var waits = plan.Steps
            .SelectMany(step => step.After)
            .Where(wait => wait.LeastMin > 0)
            .GroupBy(wait => wait.Step)
            .ToDictionary(group => group.Key, group => group.Max(wait => wait.LeastMin!.Value), StringComparer.Ordinal);
        return
        [
            .. plan.Steps
                .GroupBy(step => (step.Batch, step.Station))
                .Select(group => new Lane(
                    Title(group.Key.Batch is null ? [] : [.. group.SelectMany(step => step.Surfaces).Distinct()], plan, words),
                    group.Key.Station,
                    [.. group.SelectMany(step => Bars(step, plan, ends, waits)).OrderBy(bar => bar.From).ThenBy(bar => bar.Kind)])),
        ];
    }

    private static string Title(ImmutableArray<string> surfaces, Plan plan, PlanWords words) => surfaces.Length switch
    {
        0 => WholeJob,
        <= MostNames => words.Names(surfaces),
        _ => $"{words.Names([plan.Surfaces.First(surface => surfaces.Contains(surface.Id)).Id])} and {PlanWords.Count(surfaces.Length - 1)} more",
    };

    private static IEnumerable<TimelineBar> Bars(
        PlanStep step, Plan plan, Dictionary<string, LocalDateTime> ends, Dictionary<string, double> waits)
    {
        foreach (var span in Worked(step, plan))
            yield return new TimelineBar(span.From, span.To, KindOf(step), Texts(step));
        if (waits.TryGetValue(step.Id, out var least))
            yield return new TimelineBar(step.End, step.End.PlusMinutes((long)Math.Ceiling(least)), TimelineKind.Wait, []);
        if (step.LastSafeStart is not { } last)
            yield break;

        var opens = step.After
            .Where(wait => ends.ContainsKey(wait.Step))
            .Select(wait => ends[wait.Step].PlusMinutes((long)Math.Ceiling(wait.LeastMin ?? 0)))
            .DefaultIfEmpty(step.Start)
            .Max();
        yield return new TimelineBar(LocalDateTime.Min(opens, step.Start), LocalDateTime.Max(last, step.Start), TimelineKind.Window, []);
    }

    // A step that was broken off at the end of a span is not worked on in between.
    private static PlanSpan[] Worked(PlanStep step, Plan plan)
    {
        var spans = plan.OpenHours
            .Select(span => new PlanSpan(LocalDateTime.Max(span.From, step.Start), LocalDateTime.Min(span.To, step.End)))
            .Where(span => span.From < span.To)
            .ToArray();
        return spans.Length > 0 ? spans : [new PlanSpan(step.Start, step.End)];
    }

    private static TimelineKind KindOf(PlanStep step) => step switch
    {
        { Spray: true } => TimelineKind.Spray,
        { MakesDust: true } => TimelineKind.Dust,
        _ => TimelineKind.Hands,
    };

    private static ImmutableArray<string> Texts(PlanStep step)
    {
        if (step.Coat is not { } coat)
            return [step.Kind.Replace('-', ' ')];

        var which = coat == 0 ? "mist" : $"{PlanWords.Count(coat)}/{PlanWords.Count(step.Of ?? coat)}";
        return [$"{step.Product} {which}", which];
    }

    private sealed record Lane(string Title, int? Station, ImmutableArray<TimelineBar> Bars);
}
