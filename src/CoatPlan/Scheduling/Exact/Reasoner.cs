namespace CoatPlan.Scheduling.Exact;

/// <summary>Draws conclusions from the bounds decided so far, and learns from contradictions what to avoid.</summary>
/// <remarks>
/// Source of the method: O. Ohrimenko, P. J. Stuckey, M. Codish, "Propagation via lazy clause generation", Constraints 14 (2009).
/// </remarks>
internal sealed class Reasoner
{
    private readonly Clauses clauses;
    private readonly List<Lag> lags;
    private readonly int[][] lagsBySide;
    private readonly int[] stepsBySide;
    private readonly OwnRule?[] ownRules;
    private readonly CapacityRule[] capacities;
    private readonly int[][] capacitiesByVariable;
    private readonly bool[] isAsked;
    private readonly List<Bound[]> written = [];
    private readonly Func<Bound, Cause, bool> set;
    private readonly List<Bound> conflict = [];
    private readonly List<Bound> given = [];
    private int followedUp;

    public Reasoner(Trail trail, int variables, List<Lag> lags, IEnumerable<OwnRule> ownRules, IEnumerable<CapacityRule> capacities, IEnumerable<Bound[]> clauses)
    {
        Trail = trail;
        this.lags = lags;
        this.capacities = [.. capacities];
        this.clauses = new Clauses(2 * variables);
        set = Set;

        var bySide = Enumerable.Range(0, 2 * variables).Select(_ => new List<int>()).ToArray();
        for (var l = 0; l < lags.Count; l++)
        {
            bySide[2 * lags[l].Source].Add(l);
            bySide[(2 * lags[l].Target) + 1].Add(l);
            if (lags[l].Condition is { } condition)
            {
                bySide[condition.Side].Add(l);
            }
        }

        lagsBySide = [.. bySide.Select(b => b.ToArray())];
        this.ownRules = new OwnRule?[variables];
        foreach (var rule in ownRules)
        {
            this.ownRules[rule.Variable] = rule;
        }

        stepsBySide = [.. lagsBySide.Select((l, side) => 1 + l.Sum(i => lags[i].Steps) + (this.ownRules[side >> 1] is null ? 0 : Lag.FunctionSteps))];

        var byVariable = Enumerable.Range(0, variables).Select(_ => new List<int>()).ToArray();
        for (var c = 0; c < this.capacities.Length; c++)
        {
            foreach (var variable in this.capacities[c].Variables)
            {
                byVariable[variable].Add(c);
            }
        }

        capacitiesByVariable = [.. byVariable.Select(b => b.ToArray())];
        isAsked = new bool[this.capacities.Length];
        Array.Fill(isAsked, true);
        foreach (var clause in clauses)
        {
            if (clause.Length == 1)
            {
                given.Add(clause[0]);
            }
            else
            {
                this.clauses.Add(new Clause(clause, 0));
            }
        }
    }

    public Trail Trail { get; }

    public Clauses Clauses => clauses;

    /// <summary>How much was looked at so far: a measure of time that is the same on every machine.</summary>
    public long Steps { get; private set; }

    /// <summary>Bounds that all hold and together cannot, after a contradiction.</summary>
    public IReadOnlyList<Bound> Conflict => conflict;

    /// <summary>Draws all conclusions before the first decision.</summary>
    /// <returns>Whether no contradiction was met.</returns>
    public bool Begin()
    {
        foreach (var bound in given)
        {
            if (!Set(bound, Cause.Decision))
            {
                return false;
            }
        }

        for (var l = 0; l < lags.Count; l++)
        {
            if (!FollowUp(l))
            {
                return false;
            }
        }

        foreach (var rule in ownRules)
        {
            if (rule is not null && !FollowUp(rule))
            {
                return false;
            }
        }

        return Conclude();
    }

    /// <summary>Draws all conclusions from what is new.</summary>
    /// <returns>Whether no contradiction was met.</returns>
    public bool Conclude()
    {
        while (true)
        {
            while (followedUp < Trail.Count)
            {
                if (!FollowUpSide(Trail[followedUp++].Side))
                {
                    return false;
                }
            }

            var asked = Array.IndexOf(isAsked, true);
            if (asked < 0)
            {
                return true;
            }

            isAsked[asked] = false;
            Steps += capacities[asked].Steps;
            if (!capacities[asked].Conclude(this))
            {
                isAsked[asked] = true;
                return false;
            }
        }
    }

    /// <summary>Sets a bound; false, with the conflict told, when its opposite holds.</summary>
    public bool Set(Bound bound, Cause cause)
    {
        if (Trail.Holds(bound))
        {
            return true;
        }

        if (Trail.Fails(bound))
        {
            conflict.Clear();
            Explain(bound, cause, conflict);
            conflict.Add(bound.Not);
            return false;
        }

        Trail.Grow(bound, cause);
        return true;
    }

    /// <summary>Sets a bound for reasons that are written down.</summary>
    public bool SetBecause(Bound bound, List<Bound> because)
    {
        if (Trail.Holds(bound))
        {
            return true;
        }

        if (Trail.Fails(bound))
        {
            conflict.Clear();
            conflict.AddRange(because);
            conflict.Add(bound.Not);
            return false;
        }

        written.Add([.. because]);
        Trail.Grow(bound, new Cause(CauseKind.Written, written.Count - 1));
        return true;
    }

    public bool Contradict(List<Bound> because)
    {
        conflict.Clear();
        conflict.AddRange(because);
        return false;
    }

    /// <summary>Takes decisions back.</summary>
    public void BackTo(int level, Action<int> shrunk)
    {
        Trail.BackTo(level, shrunk);
        followedUp = Math.Min(followedUp, Trail.Count);
        if (level == 0)
        {
            written.Clear();
        }
    }

    /// <summary>Adds bounds that held when this one came to hold, and from which it follows.</summary>
    public void Explain(Bound bound, Cause cause, List<Bound> into)
    {
        switch (cause.Kind)
        {
            case CauseKind.Clause:
                foreach (var other in clauses[cause.Index].Bounds)
                {
                    if (other.Side != bound.Side)
                    {
                        into.Add(other.Not);
                    }
                }

                break;
            case CauseKind.Lag:
                var lag = lags[cause.Index];
                into.Add(bound.Side == 2 * lag.Target
                    ? Bound.AtLeast(lag.Source, lag.SourceFor(bound.Value))
                    : Bound.AtMost(lag.Target, lag.At(-bound.Value + 1) - 1));
                if (lag.Condition is { } condition)
                {
                    into.Add(condition);
                }

                break;
            case CauseKind.OwnRule:
                into.Add(ownRules[cause.Index]!.Explain(bound));
                break;
            case CauseKind.Written:
                into.AddRange(written[cause.Index]);
                break;
            default:
                break;
        }
    }

    private bool FollowUpSide(int side)
    {
        Steps += stepsBySide[side] + clauses.WatchedAt(side);
        foreach (var c in capacitiesByVariable[side >> 1])
        {
            isAsked[c] = true;
        }

        if (!clauses.FollowUp(side, Trail, set))
        {
            return false;
        }

        foreach (var l in lagsBySide[side])
        {
            if (!FollowUp(l))
            {
                return false;
            }
        }

        return ownRules[side >> 1] is not { } rule || FollowUp(rule);
    }

    private bool FollowUp(int l)
    {
        var lag = lags[l];
        if (lag.Condition is not { } condition || Trail.Holds(condition))
        {
            var cause = new Cause(CauseKind.Lag, l);
            return Set(Bound.AtLeast(lag.Target, lag.At(Trail.Least(lag.Source))), cause)
                && Set(Bound.AtMost(lag.Source, lag.LastSource(Trail.Most(lag.Target), Trail.Most(lag.Source))), cause);
        }

        if (Trail.Fails(condition) || lag.At(Trail.Least(lag.Source)) <= Trail.Most(lag.Target))
        {
            return true;
        }

        var most = Trail.Most(lag.Target);
        return SetBecause(condition.Not, [Bound.AtLeast(lag.Source, lag.SourceFor(most + 1)), Bound.AtMost(lag.Target, most)]);
    }

    private bool FollowUp(OwnRule rule)
    {
        var cause = new Cause(CauseKind.OwnRule, rule.Variable);
        return Set(Bound.AtLeast(rule.Variable, rule.Next(Trail.Least(rule.Variable))), cause)
            && Set(Bound.AtMost(rule.Variable, rule.Last(Trail.Most(rule.Variable))), cause);
    }
}
