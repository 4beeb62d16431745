using System.Globalization;
using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

/// <summary>Checks a schedule by walking through every minute of it; shares no code with the generator.</summary>
internal static class MinuteByMinute
{
    public static IReadOnlyList<string> Violations(Network network, Schedule schedule)
    {
        var found = new List<string>();
        var at = new Dictionary<string, Placement>();
        for (var i = 0; i < network.Activities.Length; i++)
        {
            at[network.Activities[i].Id] = schedule.Placements[i];
        }

        foreach (var activity in network.Activities)
        {
            CheckAlone(network, schedule, activity, at[activity.Id], found);
        }

        CheckLinks(network, schedule, at, found);
        CheckResources(network, at, found);
        CheckAvoidances(network, at, found);
        if (schedule.Finish != schedule.Placements.Max(p => p.End))
        {
            found.Add("finish");
        }

        return found;
    }

    private static int WorkOf(Network network, Schedule schedule, Activity activity)
    {
        var work = activity.Work;
        for (var l = 0; l < network.Links.Length; l++)
        {
            if (network.Links[l].To == activity.Id && schedule.WindowInUse[l] >= 0)
            {
                work += network.Links[l].Windows[schedule.WindowInUse[l]].AddedWork;
            }
        }

        return work;
    }

    private static void CheckAlone(Network network, Schedule schedule, Activity activity, Placement at, List<string> found)
    {
        if (activity.Fixed is { } fact)
        {
            Expect(at == fact, $"{activity.Id} was a fact", found);
            return;
        }

        var work = WorkOf(network, schedule, activity);
        Expect(at.Start >= activity.Release, $"{activity.Id} before its release", found);
        Expect(at.End <= network.Horizon, $"{activity.Id} after the horizon", found);
        Expect(activity.NextStart is null || activity.NextStart(at.Start) == at.Start, $"{activity.Id} against its start rule", found);

        bool Open(int minute) => activity.Hours is null || activity.Hours.Openings.Any(o => o.Opens <= minute && minute < o.Closes);
        var worked = 0;
        for (var minute = at.Start; minute < at.End; minute++)
        {
            worked += Open(minute) ? 1 : 0;
            Expect(activity.Breakable || Open(minute), $"{activity.Id} broken at {minute}", found);
        }

        Expect(worked == work, $"{activity.Id} worked {worked} of {work}", found);
        Expect(work == 0 || (Open(at.Start) && Open(at.End - 1)), $"{activity.Id} starts or ends while closed", found);
    }

    private static void CheckLinks(Network network, Schedule schedule, Dictionary<string, Placement> at, List<string> found)
    {
        for (var l = 0; l < network.Links.Length; l++)
        {
            var link = network.Links[l];
            if (network.Activities.Single(a => a.Id == link.To).Fixed is not null)
            {
                continue;
            }

            var k = schedule.WindowInUse[l];
            if (k < 0 || k >= link.Windows.Length)
            {
                found.Add(FormattableString.Invariant($"link {l} uses window {k}"));
                continue;
            }

            var start = at[link.To].Start;
            Expect(start >= Moment(link.Windows[k].Least, at[link.From]), $"{link.From} to {link.To} too early", found);
            Expect(link.Windows[k].Most is not { } most || start <= Moment(most, at[link.From]), $"{link.From} to {link.To} too late", found);
        }
    }

    private static int Moment(Wait wait, Placement from)
    {
        var anchor = wait.Anchor == Anchor.Start ? from.Start : from.End;
        return wait.Moment is { } moment ? moment(anchor) : anchor + wait.Minutes;
    }

    private static void CheckResources(Network network, Dictionary<string, Placement> at, List<string> found)
    {
        foreach (var resource in network.Resources)
        {
            var use = new Dictionary<int, int>();
            void Use(int from, int until, int amount)
            {
                for (var minute = from; minute < until; minute++)
                {
                    use[minute] = use.GetValueOrDefault(minute) + amount;
                }
            }

            foreach (var activity in network.Activities)
            {
                foreach (var demand in activity.Demands.Where(d => d.Resource == resource.Name))
                {
                    Use(at[activity.Id].Start, at[activity.Id].End, demand.Amount);
                }
            }

            foreach (var hold in network.Holds.Where(h => h.Resource == resource.Name))
            {
                var end = at[hold.UntilActivity].End;
                Use(at[hold.FromActivity].Start, hold.Until?.Invoke(end) ?? end, hold.Amount);
            }

            foreach (var (minute, amount) in use.OrderBy(u => u.Key).Where(u => u.Value > resource.Capacity).Take(1))
            {
                found.Add(FormattableString.Invariant($"{amount} of {resource.Capacity} {resource.Name} at {minute}"));
            }
        }
    }

    private static void CheckAvoidances(Network network, Dictionary<string, Placement> at, List<string> found)
    {
        foreach (var a in network.Activities)
        {
            foreach (var b in network.Activities.Where(b => b.Id != a.Id && (a.Fixed is null || b.Fixed is null)))
            {
                foreach (var avoidance in a.Avoids)
                {
                    foreach (var presence in b.Presences.Where(p => p.Kind == avoidance.Kind && p.Key != avoidance.ExceptKey))
                    {
                        var gone = presence.Until?.Invoke(at[b.Id].End) ?? at[b.Id].End;
                        var apart = at[a.Id].End <= at[b.Id].Start || gone <= at[a.Id].Start
                            || at[a.Id].Start == at[a.Id].End || at[b.Id].Start == gone;
                        Expect(apart, $"{a.Id} meets what {b.Id} leaves", found);
                    }
                }
            }
        }
    }

    private static void Expect(bool holds, FormattableString otherwise, List<string> found)
    {
        if (!holds)
        {
            found.Add(otherwise.ToString(CultureInfo.InvariantCulture));
        }
    }
}
