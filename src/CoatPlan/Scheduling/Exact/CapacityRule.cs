namespace CoatPlan.Scheduling.Exact;

/// <summary>
/// Where the stretches of a resource must lie whatever is decided, and what is left beside them. Each conclusion is explained by one minute at
/// which too much would be held.
/// </summary>
/// <remarks>
/// Source of the method: A. Schutt, T. Feydy, P. J. Stuckey, M. G. Wallace, "Solving RCPSP/max by lazy clause generation", J. Scheduling 16 (2013).
/// </remarks>
internal sealed class CapacityRule(Stretch[] stretches, int capacity)
{
    private readonly int[] partStarts = new int[stretches.Length];
    private readonly int[] partEnds = new int[stretches.Length];
    private readonly (int Time, int Change)[] changes = new (int, int)[2 * stretches.Length];
    private readonly List<(int Start, int End, int Level)> levels = [];
    private readonly List<Bound> because = [];

    public IEnumerable<int> Variables => stretches.SelectMany(s => new[] { s.From, s.Until }).Distinct();

    /// <summary>About how many steps it takes to draw conclusions once.</summary>
    public int Steps { get; } = stretches.Sum(s => s.ConstantMinutes is null ? Lag.FunctionSteps : 1);

    /// <summary>Draws the conclusions that the present bounds permit.</summary>
    /// <returns>Whether no contradiction was met.</returns>
    public bool Conclude(Reasoner reasoner)
    {
        var trail = reasoner.Trail;
        Level(trail);
        foreach (var (start, _, level) in levels)
        {
            if (level > capacity)
            {
                because.Clear();
                Because(start, level - capacity - 1, except: -1);
                return reasoner.Contradict(because);
            }
        }

        for (var s = 0; s < stretches.Length; s++)
        {
            if (!(trail.IsFixed(stretches[s].From) && trail.IsFixed(stretches[s].Until)) && !(PushStart(reasoner, s) && PushEnd(reasoner, s)))
            {
                return false;
            }
        }

        return true;
    }

    private void Level(Trail trail)
    {
        var count = 0;
        for (var s = 0; s < stretches.Length; s++)
        {
            partStarts[s] = trail.Most(stretches[s].From);
            partEnds[s] = stretches[s].EndFor(trail.Least(stretches[s].Until));
            if (partStarts[s] < partEnds[s])
            {
                changes[count++] = (partStarts[s], stretches[s].Amount);
                changes[count++] = (partEnds[s], -stretches[s].Amount);
            }
        }

        Array.Sort(changes, 0, count, ByTime.Instance);
        levels.Clear();
        var level = 0;
        for (var c = 0; c < count; c++)
        {
            level += changes[c].Change;
            if (c + 1 < count && changes[c + 1].Time > changes[c].Time && level > 0)
            {
                levels.Add((changes[c].Time, changes[c + 1].Time, level));
            }
        }
    }

    // Held at a minute that is too full unless it starts after it: so it does.
    private bool PushStart(Reasoner reasoner, int s)
    {
        var trail = reasoner.Trail;
        var stretch = stretches[s];
        foreach (var (start, end, level) in levels)
        {
            if (level + stretch.Amount <= capacity || (partStarts[s] <= start && partEnds[s] >= end))
            {
                continue;
            }

            while (trail.Least(stretch.From) < end)
            {
                var minute = Math.Min(end, stretch.EndFor(trail.Least(stretch.Until))) - 1;
                if (minute < start || minute < trail.Least(stretch.From))
                {
                    break;
                }

                because.Clear();
                Because(minute, level + stretch.Amount - capacity - 1, s);
                because.Add(Bound.AtLeast(stretch.Until, stretch.StartHolding(minute)));
                if (!reasoner.SetBecause(Bound.AtLeast(stretch.From, minute + 1), because))
                {
                    return false;
                }
            }
        }

        return true;
    }

    // Begun by a minute that is too full, it must have been given back by then.
    private bool PushEnd(Reasoner reasoner, int s)
    {
        var trail = reasoner.Trail;
        var stretch = stretches[s];
        for (var l = levels.Count - 1; l >= 0; l--)
        {
            var (start, end, level) = levels[l];
            if (level + stretch.Amount <= capacity || (partStarts[s] <= start && partEnds[s] >= end))
            {
                continue;
            }

            while (true)
            {
                var minute = Math.Max(start, trail.Most(stretch.From));
                if (minute >= end)
                {
                    break;
                }

                var until = stretch.StartHolding(minute) - 1;
                if (trail.Most(stretch.Until) <= until)
                {
                    break;
                }

                because.Clear();
                Because(minute, level + stretch.Amount - capacity - 1, s);
                because.Add(Bound.AtMost(stretch.From, minute));
                if (!reasoner.SetBecause(Bound.AtMost(stretch.Until, until), because))
                {
                    return false;
                }
            }
        }

        return true;
    }

    // Who holds how much at a minute, leaving out what is not needed for there to be too much.
    private void Because(int minute, int spare, int except)
    {
        for (var s = 0; s < stretches.Length; s++)
        {
            if (s == except || partStarts[s] > minute || partEnds[s] <= minute)
            {
                continue;
            }

            if (stretches[s].Amount <= spare)
            {
                spare -= stretches[s].Amount;
                continue;
            }

            because.Add(Bound.AtMost(stretches[s].From, minute));
            because.Add(Bound.AtLeast(stretches[s].Until, stretches[s].StartHolding(minute)));
        }
    }

    private sealed class ByTime : IComparer<(int Time, int Change)>
    {
        public static readonly ByTime Instance = new();

        public int Compare((int Time, int Change) x, (int Time, int Change) y) =>
            x.Time != y.Time ? x.Time.CompareTo(y.Time) : x.Change.CompareTo(y.Change);
    }
}
