namespace CoatPlan.Scheduling.Exact;

/// <summary>The clauses given and learnt, each watched at two of its bounds.</summary>
internal sealed class Clauses(int sides)
{
    private readonly List<Watch>?[] watches = new List<Watch>?[sides];
    private readonly List<Clause> all = [];

    public Clause this[int index] => all[index];

    public int Count => all.Count;

    /// <summary>How many clauses are watched at a side.</summary>
    public int WatchedAt(int side) => watches[side]?.Count ?? 0;

    /// <summary>Adds a clause of two bounds or more, of which the first two are the last to fail.</summary>
    public int Add(Clause clause)
    {
        all.Add(clause);
        var index = all.Count - 1;
        WatchAt(index, clause.Bounds[0]);
        WatchAt(index, clause.Bounds[1]);
        return index;
    }

    /// <summary>Follows up a side that has grown.</summary>
    /// <returns>Whether no clause failed.</returns>
    public bool FollowUp(int side, Trail trail, Func<Bound, Cause, bool> set)
    {
        var list = watches[side];
        if (list is null)
        {
            return true;
        }

        var value = trail.Value(side);
        var kept = 0;
        for (var i = 0; i < list.Count; i++)
        {
            var watch = list[i];
            if (watch.FailsAt > value)
            {
                list[kept++] = watch;
                continue;
            }

            var clause = all[watch.Clause];
            if (clause.IsDropped)
            {
                continue;
            }

            var bounds = clause.Bounds;
            if (bounds[0].Side == (side ^ 1))
            {
                (bounds[0], bounds[1]) = (bounds[1], bounds[0]);
            }

            if (trail.Holds(bounds[0]))
            {
                list[kept++] = watch;
                continue;
            }

            if (MoveWatch(watch.Clause, bounds, trail))
            {
                continue;
            }

            list[kept++] = watch;
            if (!set(bounds[0], new Cause(CauseKind.Clause, watch.Clause)))
            {
                for (i++; i < list.Count; i++)
                {
                    list[kept++] = list[i];
                }

                list.RemoveRange(kept, list.Count - kept);
                return false;
            }
        }

        list.RemoveRange(kept, list.Count - kept);
        return true;
    }

    /// <summary>Drops the half of the clauses learnt since an index that came from the most decisions; only without decisions standing.</summary>
    public void Thin(int from)
    {
        var learnt = all.Skip(from).Where(c => !c.IsDropped && c.Levels > 2).OrderByDescending(c => c.Levels).ToArray();
        foreach (var clause in learnt.Take(learnt.Length / 2))
        {
            clause.IsDropped = true;
        }
    }

    private bool MoveWatch(int index, Bound[] bounds, Trail trail)
    {
        for (var k = 2; k < bounds.Length; k++)
        {
            if (!trail.Fails(bounds[k]))
            {
                (bounds[1], bounds[k]) = (bounds[k], bounds[1]);
                WatchAt(index, bounds[1]);
                return true;
            }
        }

        return false;
    }

    private void WatchAt(int index, Bound bound) => (watches[bound.Side ^ 1] ??= []).Add(new Watch(index, 1 - bound.Value));

    private readonly record struct Watch(int Clause, int FailsAt);
}
