using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>What is preferred among schedules that finish together: fewer films reworked for a missed window, then fewer work sessions, then fewer changes of colour.</summary>
internal static class Preference
{
    // No job changes colour so often that it would weigh more than a session, none has sessions enough to weigh more than a film to be scuffed anew.
    private const long Session = 10_000;
    private const long Rework = 100_000_000;

    /// <summary>From a schedule of a network to its cost, the smaller the better.</summary>
    public static Func<Schedule, long> Of(WorkNetwork drawn, Workplace place)
    {
        ImmutableArray<int> hands = [.. Enumerable.Range(0, drawn.Nodes.Length).Where(i => !drawn.Nodes[i].IsMilestone)];
        ImmutableArray<int> coats = [.. hands.Where(i => drawn.Nodes[i].Coat is { Sprayed: true })];
        var products = drawn.Nodes.Select(node => node.Coat?.Label.Key).ToArray();
        ImmutableArray<int> gaps = [.. Enumerable.Range(0, drawn.Links.Length).Where(l => !drawn.Links[l].ByWindow.IsEmpty)];
        return schedule =>
            (Rework * gaps.Count(l => IsReworked(drawn.Links[l], schedule.WindowInUse[l])))
            + (Session * Sessions(schedule, hands, place.Hours))
            + ColourChanges(schedule, coats, products);
    }

    private static bool IsReworked(WorkLink gap, int window) => window >= 0 && gap.ByWindow[window].Stage == FilmStage.Through;

    private static int Sessions(Schedule schedule, ImmutableArray<int> hands, OpenHours hours)
    {
        var used = new HashSet<int>();
        foreach (var i in hands)
        {
            if (!schedule.Skipped.IsEmpty && schedule.Skipped[i])
                continue;

            var last = hours.IndexAt(schedule.Placements[i].End - 1);
            for (var opening = hours.IndexAt(schedule.Placements[i].Start); opening <= last; opening++)
                used.Add(opening);
        }

        return used.Count;
    }

    private static int ColourChanges(Schedule schedule, ImmutableArray<int> coats, string?[] products)
    {
        var (changes, before) = (0, (string?)null);
        foreach (var i in coats.OrderBy(i => schedule.Placements[i].Start))
        {
            changes += before is not null && before != products[i] ? 1 : 0;
            before = products[i];
        }

        return changes;
    }
}
