namespace CoatPlan.Timetable;

/// <summary>The moments at which the whole job can stop for a week without rework.</summary>
/// <remarks>
/// Nothing is in hand, no window in use would close within the week, no gap would become a rest that asks for a wipe, no tape is on, and no metal lies bare
/// that was cleaned already. A moment before the first step or after the last one is none.
/// </remarks>
internal static class RestPoints
{
    /// <summary>How long the job can rest, minutes.</summary>
    public const int WeekMinutes = 7 * NodaConstants.MinutesPerDay;

    // From the first of these on, bare metal has nothing on it that keeps flash rust away until its first coat.
    private static readonly ImmutableArray<string> Baring = ["degrease", "wash", "degrease-again", "solvent-clean", "derust", "featheredge", "scuff"];

    private static readonly ImmutableArray<string> LaysBare = ["derust", "featheredge"];

    private static readonly ImmutableArray<string> Taping = ["mask", "remask"];

    /// <summary>The rest points in order; none of a job of which only a part was placed, since what is missing could not wait.</summary>
    /// <param name="arranged">What was placed.</param>
    /// <param name="steps">The same as steps, by start.</param>
    /// <param name="place">What the network was drawn from.</param>
    public static ImmutableArray<RestPoint> Of(Arranged arranged, ImmutableArray<DatedStep> steps, Workplace place)
    {
        if (arranged.Stopped is not null || arranged.Outcome.Schedule is null || steps.IsEmpty)
            return [];

        var broken = Unresting(arranged, steps, place).OrderBy(stretch => stretch.From).ToArray();
        var points = ImmutableArray.CreateBuilder<RestPoint>();
        var (next, brokenUntil) = (0, int.MinValue);
        var inHandUntil = int.MinValue;
        for (var i = 0; i < steps.Length - 1; i++)
        {
            inHandUntil = Math.Max(inHandUntil, steps[i].To);
            if (steps[i + 1].From < inHandUntil || steps[i + 1].Done)
                continue;

            for (; next < broken.Length && broken[next].From <= inHandUntil; next++)
                brokenUntil = Math.Max(brokenUntil, broken[next].To);
            if (brokenUntil < inHandUntil)
                points.Add(Point(steps[..(i + 1)].Last(step => step.To == inHandUntil), steps[i + 1]));
        }

        return points.ToImmutable();
    }

    private static RestPoint Point(DatedStep after, DatedStep next) =>
        new(after.Id, after.End, $"No window is closing, no tape is on and no cleaned metal lies bare; next comes “{next.Title}”.");

    private static IEnumerable<(int From, int To)> Unresting(Arranged arranged, ImmutableArray<DatedStep> steps, Workplace place) =>
        [.. Links(arranged), .. Tape(steps, place), .. BareMetal(arranged, place)];

    // A window that closes within the week, and a wait so short that a rest in its stead would ask for a wipe.
    private static IEnumerable<(int From, int To)> Links(Arranged arranged)
    {
        var drawn = arranged.Drawn;
        for (var link = 0; link < drawn.Links.Length; link++)
        {
            var (from, to) = (drawn.Leader(link), drawn.Follower(link));
            var (at, then) = (arranged.Outcome.Placed[from]!.Value, arranged.Outcome.Placed[to]!.Value);
            var closes = WaitWords.InUse(arranged, link).Most is { } most && most.After(at) < then.Start + WeekMinutes;
            var betweenCoats = arranged.Drawn.Nodes[from].Coat is not null && arranged.Drawn.Nodes[to].Coat is not null;
            if (closes || (betweenCoats && then.Start - at.End < GapChoices.RestMinutes))
                yield return (at.End, then.Start);
        }
    }

    private static IEnumerable<(int From, int To)> Tape(ImmutableArray<DatedStep> steps, Workplace place)
    {
        if (place.TapeLimitMinutes > Clock.Horizon)
            yield break;

        var on = new Dictionary<(string?, int?), int>();
        foreach (var step in steps)
        {
            if (Taping.Contains(step.Word))
                on[(step.Batch, step.Station)] = step.To;
            else if (step.Word == "unmask")
                yield return (on.GetValueOrDefault((step.Batch, step.Station), int.MinValue), step.From);
        }
    }

    private static IEnumerable<(int From, int To)> BareMetal(Arranged arranged, Workplace place)
    {
        var bareSurfaces = place.Job.Surfaces.Where(surface => surface.Finish == "bare").Select(surface => surface.Id).ToHashSet(StringComparer.Ordinal);
        var batches = Enumerable.Range(0, arranged.Drawn.Nodes.Length)
            .Where(index => arranged.Drawn.Nodes[index].Batch is not null)
            .GroupBy(index => arranged.Drawn.Nodes[index].Batch!.Key, StringComparer.Ordinal);
        foreach (var batch in batches)
        {
            var before = batch.Where(index => arranged.Drawn.Nodes[index].Operation is { Stage: < Stages.Coat } operation && Baring.Contains(operation.Word)).ToArray();
            var coats = batch.Where(index => arranged.Drawn.Nodes[index].Coat is not null).ToArray();
            if (before.Length == 0 || coats.Length == 0)
                continue;

            var isBare = arranged.Drawn.Nodes[coats[0]].Batch!.Surfaces.Any(bareSurfaces.Contains)
                || before.Any(index => LaysBare.Contains(arranged.Drawn.Nodes[index].Operation!.Word));
            if (isBare)
                yield return (before.Min(index => arranged.Outcome.Placed[index]!.Value.End), coats.Min(index => arranged.Outcome.Placed[index]!.Value.Start));
        }
    }
}
