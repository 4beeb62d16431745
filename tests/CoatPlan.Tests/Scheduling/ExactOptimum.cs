using CoatPlan.Scheduling;
using Google.OrTools.Sat;
using Google.OrTools.Util;

namespace CoatPlan.Tests.Scheduling;

/// <summary>The least finish of a small network by an exact solver that shares nothing with the room: every function of time is a table of minutes.</summary>
internal static class ExactOptimum
{
    /// <summary>The least finish; null when nothing finishes by the latest one asked about.</summary>
    public static int? Of(Network network, int latest)
    {
        var model = new CpModel();
        var horizon = network.Horizon;
        var starts = new Dictionary<string, IntVar>();
        var ends = new Dictionary<string, LinearExpr>();
        foreach (var activity in network.Activities)
        {
            var permitted = Enumerable.Range(activity.Release, horizon - activity.Release + 1).Where(t => EndOf(activity, t, horizon) is not null).ToArray();
            if (permitted.Length == 0)
            {
                return null;
            }

            starts[activity.Id] = model.NewIntVarFromDomain(Domain.FromValues([.. permitted.Select(t => (long)t)]), activity.Id);
            ends[activity.Id] = activity.Breakable && activity.Hours is not null
                ? Table(model, starts[activity.Id], horizon, t => EndOf(activity, t, horizon) ?? 0)
                : starts[activity.Id] + activity.Work;
        }

        foreach (var link in network.Links)
        {
            var choices = link.Windows.Select(_ => model.NewBoolVar("window")).ToArray();
            model.AddBoolOr(choices);
            foreach (var (window, choice) in link.Windows.Zip(choices))
            {
                model.Add(starts[link.To] >= Moment(window.Least, link.From)).OnlyEnforceIf(choice);
                if (window.Most is { } most)
                {
                    model.Add(starts[link.To] <= Moment(most, link.From)).OnlyEnforceIf(choice);
                }
            }
        }

        foreach (var resource in network.Resources)
        {
            var cumulative = model.AddCumulative(resource.Capacity);
            foreach (var activity in network.Activities.Where(a => a.Work > 0))
            {
                foreach (var demand in activity.Demands.Where(d => d.Resource == resource.Name))
                {
                    cumulative.AddDemand(Interval(starts[activity.Id], ends[activity.Id]), demand.Amount);
                }
            }

            foreach (var hold in network.Holds.Where(h => h.Resource == resource.Name))
            {
                cumulative.AddDemand(Interval(starts[hold.FromActivity], After(ends[hold.UntilActivity], hold.Until)), hold.Amount);
            }
        }

        foreach (var a in network.Activities.Where(a => a.Work > 0))
        {
            foreach (var b in network.Activities.Where(b => b.Id != a.Id && b.Work > 0))
            {
                foreach (var avoidance in a.Avoids)
                {
                    foreach (var presence in b.Presences.Where(p => p.Kind == avoidance.Kind && p.Key != avoidance.ExceptKey))
                    {
                        var first = model.NewBoolVar("first");
                        model.Add(ends[a.Id] <= starts[b.Id]).OnlyEnforceIf(first);
                        model.Add(After(ends[b.Id], presence.Until) <= starts[a.Id]).OnlyEnforceIf(first.Not());
                    }
                }
            }
        }

        var finish = model.NewIntVar(0, latest, "finish");
        model.AddMaxEquality(finish, ends.Values);
        model.Minimize(finish);
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1 max_deterministic_time:20" };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => (int)solver.ObjectiveValue,
            CpSolverStatus.Infeasible => null,
            var status => throw new InvalidOperationException($"The solver stopped with {status}."),
        };

        LinearExpr Moment(Wait wait, string from)
        {
            var anchor = wait.Anchor == Anchor.Start ? starts[from] : ends[from];
            return wait.Moment is null ? anchor + wait.Minutes : After(anchor, wait.Moment);
        }

        LinearExpr After(LinearExpr anchor, Func<int, int>? moment) => moment is null ? anchor : Table(model, anchor, horizon, moment);

        IntervalVar Interval(IntVar start, LinearExpr end)
        {
            var size = model.NewIntVar(0, 10 * horizon, "size");
            return model.NewIntervalVar(start, size, end, "interval");
        }
    }

    private static IntVar Table(CpModel model, LinearExpr index, int horizon, Func<int, int> value)
    {
        var values = Enumerable.Range(0, horizon + 1).Select(value).ToArray();
        var result = model.NewIntVar(values.Min(), values.Max(), "table");
        model.AddElement(index, values, result);
        return result;
    }

    private static int? EndOf(Activity activity, int start, int horizon)
    {
        bool Open(int minute) => activity.Hours is null || activity.Hours.Openings.Any(o => o.Opens <= minute && minute < o.Closes);
        if ((activity.NextStart is not null && activity.NextStart(start) != start) || (activity.Work > 0 && !Open(start)))
        {
            return null;
        }

        var end = start;
        for (var left = activity.Work; left > 0; end++)
        {
            if (end >= horizon || (!activity.Breakable && !Open(end)))
            {
                return null;
            }

            left -= Open(end) ? 1 : 0;
        }

        return end;
    }
}
