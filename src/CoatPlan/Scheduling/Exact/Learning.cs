namespace CoatPlan.Scheduling.Exact;

/// <summary>From a contradiction, the clause that would have prevented it: back to the one bound of the newest decision through which all runs.</summary>
internal sealed class Learning(Reasoner reasoner, int sides)
{
    private const int NotNeeded = int.MinValue;

    private readonly int[] needed = NewNeeded(sides);
    private readonly int[] positions = new int[sides];
    private readonly List<int> touched = [];
    private readonly bool[] isTouched = new bool[sides];
    private readonly List<Bound> reasons = [];
    private int fromNewest;

    /// <summary>The bounds of the clause: first the one to be set after going back, then one of the level to go back to.</summary>
    public List<Bound> Bounds { get; } = [];

    /// <summary>To which level the search goes back.</summary>
    public int BackLevel { get; private set; }

    /// <summary>From how many decisions the clause was learnt.</summary>
    public int Levels { get; private set; }

    /// <summary>Learns from the reasoner's conflict, some of which came to hold after the newest decision.</summary>
    /// <returns>Whether a clause was learnt; not when explanations do not hold, as where a caller's function decreases after all.</returns>
    public bool Learn()
    {
        var trail = reasoner.Trail;
        fromNewest = 0;
        foreach (var bound in reasoner.Conflict)
        {
            Need(bound);
        }

        var position = trail.Count;
        int top;
        while (true)
        {
            do
            {
                if (--position < 0)
                {
                    return false;
                }

                top = trail[position].Side;
            }
            while (needed[top] == NotNeeded || positions[top] != position);

            if (fromNewest == 1)
            {
                break;
            }

            var bound = new Bound(top, needed[top]);
            needed[top] = NotNeeded;
            fromNewest--;
            reasons.Clear();
            reasoner.Explain(bound, trail[position].Cause, reasons);
            foreach (var reason in reasons)
            {
                Need(reason);
            }
        }

        Collect(top);
        return true;
    }

    private static int[] NewNeeded(int sides)
    {
        var needed = new int[sides];
        Array.Fill(needed, NotNeeded);
        return needed;
    }

    private void Collect(int top)
    {
        var trail = reasoner.Trail;
        Bounds.Clear();
        Bounds.Add(new Bound(top, needed[top]).Not);
        BackLevel = 0;
        var levels = new HashSet<int> { trail.Level };
        foreach (var side in touched)
        {
            if (needed[side] == NotNeeded || side == top || FollowsFromOthers(side))
            {
                continue;
            }

            Bounds.Add(new Bound(side, needed[side]).Not);
            var level = trail.LevelOf(positions[side]);
            levels.Add(level);
            if (level > BackLevel)
            {
                BackLevel = level;
                (Bounds[1], Bounds[^1]) = (Bounds[^1], Bounds[1]);
            }
        }

        Levels = levels.Count;
        foreach (var side in touched)
        {
            needed[side] = NotNeeded;
            isTouched[side] = false;
        }

        touched.Clear();
    }

    // Only from such as came to hold before it, so that no two are left out on the strength of each other.
    private bool FollowsFromOthers(int side)
    {
        var cause = reasoner.Trail[positions[side]].Cause;
        if (cause.Kind == CauseKind.Decision)
        {
            return false;
        }

        reasons.Clear();
        reasoner.Explain(new Bound(side, needed[side]), cause, reasons);
        foreach (var reason in reasons)
        {
            if (needed[reason.Side] < reason.Value || positions[reason.Side] >= positions[side])
            {
                var position = reasoner.Trail.PositionOf(reason);
                if (position >= 0 && reasoner.Trail.LevelOf(position) > 0)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private void Need(Bound bound)
    {
        var trail = reasoner.Trail;
        if (needed[bound.Side] >= bound.Value)
        {
            return;
        }

        var position = trail.PositionOf(bound);
        if (position < 0 || trail.LevelOf(position) == 0)
        {
            return;
        }

        if (!isTouched[bound.Side])
        {
            isTouched[bound.Side] = true;
            touched.Add(bound.Side);
        }

        if (needed[bound.Side] != NotNeeded && positions[bound.Side] >= trail.LevelStart)
        {
            fromNewest--;
        }

        needed[bound.Side] = bound.Value;
        positions[bound.Side] = position;
        fromNewest += position >= trail.LevelStart ? 1 : 0;
    }
}
