using CoatPlan.Scheduling;

using CoatPlan.Quantities;

namespace CoatPlan.Timetable;

/// <summary>Why somebody has nothing to do, for every stretch inside the working hours until the last step ends.</summary>
/// <remarks>
/// Saturday 10:22–10:32, one person: the first coat is on and its recoat window opens at 10:32. Saturday 11:50–12:00: the next coat takes 14 min, and the
/// span has 10 min left. With the minutes in which people work, the stretches fill the working hours without set-up and put-away.
/// </remarks>
internal sealed class IdleHours
{
    // A stretch is told in pieces where its cause changes; a shorter piece is told with its neighbour.
    private const int ShortestPiece = 5;

    // From a wipe to its coat, from the coat before to the wipe: a cause lies seldom further down the chain.
    private const int MostFollowers = 4;

    private readonly Arranged arranged;
    private readonly Workplace place;
    private readonly Dictionary<string, DatedStep> stepById;

    private IdleHours(Arranged arranged, ImmutableArray<DatedStep> steps, Workplace place)
    {
        (this.arranged, this.place) = (arranged, place);
        stepById = steps.ToDictionary(step => step.Id, StringComparer.Ordinal);
    }

    /// <summary>The stretches by station, then by time; the time before <c>as-of</c> is past and not told.</summary>
    /// <param name="arranged">What was placed.</param>
    /// <param name="steps">The same as steps, by start.</param>
    /// <param name="place">What the network was drawn from.</param>
    public static ImmutableArray<IdleStretch> Of(Arranged arranged, ImmutableArray<DatedStep> steps, Workplace place)
    {
        if (steps.IsEmpty)
            return [];

        var idle = new IdleHours(arranged, steps, place);
        var finish = steps.Max(step => step.To);
        return [.. place.Stations.SelectMany(station => idle.At(station, [.. steps.Where(step => step.Station == station)], finish))];
    }

    private IEnumerable<IdleStretch> At(int? station, ImmutableArray<DatedStep> steps, int finish)
    {
        IdleStretch? last = null;
        foreach (var (from, to, people) in Free(steps, finish))
        {
            foreach (var piece in Told(from, to, NextFrom(steps, to)))
            {
                var next = new IdleStretch(place.Clock.At(piece.From), place.Clock.At(piece.To), station, people, piece.Why);
                if (last is not null && last.To == next.From && last.People == people && last.Why == next.Why)
                {
                    last = last with { To = next.To };
                    continue;
                }

                if (last is not null)
                    yield return last;
                last = next;
            }
        }

        if (last is not null)
            yield return last;
    }

    // Inside each opening, the stretches between starts and ends of steps in which fewer people are busy than there are.
    private IEnumerable<(int From, int To, int People)> Free(ImmutableArray<DatedStep> steps, int finish)
    {
        var events = steps
            .SelectMany(step => new[] { (At: step.From, Change: step.People), (At: step.To, Change: -step.People) })
            .OrderBy(change => change.At)
            .ToArray();
        var (next, busy) = (0, 0);
        foreach (var opening in place.Hours.Openings)
        {
            var (at, until) = (Math.Max(opening.Opens, place.Done.Release), Math.Min(opening.Closes, finish));
            while (at < until)
            {
                for (; next < events.Length && events[next].At <= at; next++)
                    busy += events[next].Change;

                var to = next < events.Length ? Math.Min(until, events[next].At) : until;
                if (busy < place.Job.Crew.People)
                    yield return (at, to, place.Job.Crew.People - busy);
                at = to;
            }
        }
    }

    private static DatedStep? NextFrom(ImmutableArray<DatedStep> steps, int minute)
    {
        var (low, high) = (0, steps.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = steps[middle].From < minute ? (middle + 1, high) : (low, middle);
        }

        return low < steps.Length ? steps[low] : null;
    }

    private List<(int From, int To, string Why)> Told(int from, int to, DatedStep? next)
    {
        var pieces = new List<(int From, int To, string Why)>();
        for (var at = from; at < to;)
        {
            var (until, why) = next is null ? (to, "Nothing is left to do here until the rest of the job is finished.") : Cause(at, to, next, MostFollowers);
            until = to - until < ShortestPiece ? to : Math.Max(until, Math.Min(to, at + ShortestPiece));
            pieces.Add((at, until, why));
            at = until;
        }

        return pieces;
    }

    // What keeps the next step from this minute on, and until when it does.
    private (int Until, string Why) Cause(int at, int to, DatedStep next, int followers)
    {
        var index = arranged.Drawn.IndexOf(next.Id);
        var node = arranged.Drawn.Nodes[index];
        var work = node.Activity.Work;
        if (LatestLink(index, to) is { Least: var least, Link: var link } && least > at)
            return (Math.Min(least, to), WaitWords.OfLink(node.Id, arranged, link, place));
        if (node.Coat is { } coat && place.AirAround.Of(coat.Surfaces) is var air && air.FirstStarts(coat, work)(at) is { } permitted && permitted > at)
            return (Math.Min(permitted, to), air.WhyNot(coat, work, at, place.Clock, place.Format));
        if (!node.Activity.Breakable && next.From > to && place.Hours.NextFit(at, work, false) is { } fit && fit.Start > at)
            return (to, $"{WaitWords.Named(node)} takes {Words(work)} in one go, and the span has no more than {Words(LeftOf(at))} left.");
        if (followers > 0 && FollowerOutOfReach(index, at) is { } follower)
            return Cause(at, to, follower, followers - 1);

        return (to, Otherwise(node, to, next));
    }

    // A step that could begin here by itself is kept for one that must follow in time and cannot yet.
    private DatedStep? FollowerOutOfReach(int index, int at)
    {
        var begunHere = new Placement(at, at + arranged.Drawn.Nodes[index].Activity.Work);
        foreach (var link in arranged.Drawn.LinksFrom(index))
        {
            var follower = arranged.Drawn.Follower(link);
            if (WaitWords.InUse(arranged, link).Most is { } most && arranged.Outcome.Placed[follower] is { } then && then.Start > most.After(begunHere)
                && stepById.GetValueOrDefault(arranged.Drawn.Nodes[follower].Id) is { Done: false } step)
            {
                return step;
            }
        }

        return null;
    }

    // The reason why a step starts not a minute earlier speaks of its own hours; it speaks of these only where the two touch.
    private string Otherwise(WorkNode node, int to, DatedStep next) =>
        place.Hours.OpenMinutes(to, next.From) == 0
            ? next.WaitsFor
            : $"{WaitWords.Named(node)} comes next, {WaitWords.Moment(next.Start)}: begun here, the steps that follow on it could not all keep their windows.";

    // Of the steps before it those that had begun by then: what is itself still to come is not the cause.
    private (int Link, int Least)? LatestLink(int index, int to)
    {
        (int Link, int Least)? latest = null;
        foreach (var link in arranged.Drawn.LinksTo(index))
        {
            if (arranged.Outcome.Placed[arranged.Drawn.Leader(link)] is not { } from || from.Start >= to)
                continue;

            var least = WaitWords.InUse(arranged, link).Least.After(from);
            if (latest is not { } known || least > known.Least)
                latest = (link, least);
        }

        return latest;
    }

    private int LeftOf(int at) => place.Hours.Openings.First(opening => opening.Opens <= at && at < opening.Closes).Closes - at;

    private static string Words(int minutes) => QuantityFormat.Duration(Duration.FromMinutes(minutes));
}
