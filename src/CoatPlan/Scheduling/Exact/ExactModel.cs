namespace CoatPlan.Scheduling.Exact;

/// <summary>
/// A network as variables and rules: a start for each activity, then the finish, then one yes-or-no for each window of a choice and for each pair
/// that cannot run together.
/// </summary>
internal sealed class ExactModel
{
    private readonly Frame frame;
    private readonly int[] least;
    private readonly int most;
    private readonly List<Lag> lags = [];
    private readonly List<OwnRule> ownRules = [];
    private readonly List<CapacityRule> capacities = [];
    private readonly List<Bound[]> clauses = [];
    private readonly Dictionary<(int First, int Second), int> pairs = [];
    private readonly Distances distances;
    private readonly Dictionary<(int From, int Presence), Stretch> present = [];
    private readonly Remembered[] ends;
    private int variables;

    private ExactModel(Frame frame, Heads heads)
    {
        this.frame = frame;
        least = [.. Enumerable.Range(0, frame.Count).Select(i => heads[i].Start)];
        most = frame.Horizon;
        variables = frame.Count + 1;
        distances = Distances.Of(frame);
        ends = [.. Enumerable.Range(0, frame.Count).Select(i => new Remembered(s => frame.First(i, s)?.End ?? frame.Horizon + 1))];
    }

    /// <summary>The variable of the finish.</summary>
    public int Finish => frame.Count;

    public int Variables => variables;

    /// <summary>Whether the rules say less than the network does, so that starts which keep them may still break it.</summary>
    public bool IsRelaxed { get; private set; }

    public static ExactModel Of(Frame frame, Heads heads)
    {
        var model = new ExactModel(frame, heads) { IsRelaxed = Array.Exists(frame.MostAddedWork, w => w > 0) };
        model.AddOwnRules();
        model.AddLinks();
        model.AddResources();
        model.AddAvoidances();
        return model;
    }

    /// <summary>A reasoner over the rules, before its first conclusion.</summary>
    public Reasoner NewReasoner()
    {
        var trail = new Trail(variables);
        for (var i = 0; i < frame.Count; i++)
        {
            trail.Begin(i, least[i], frame.IsFixed[i] ? least[i] : most);
        }

        trail.Begin(Finish, 0, Math.Max(frame.Horizon, frame.Activities.Max(a => a.Fixed?.End ?? 0)));
        for (var v = frame.Count + 1; v < variables; v++)
        {
            trail.Begin(v, 0, 1);
        }

        return new Reasoner(trail, variables, lags, ownRules, capacities, clauses);
    }

    /// <summary>Where an activity with a permitted start runs.</summary>
    public Placement PlacementAt(int activity, int start) => new(start, EndAt(activity, start));

    private int? ConstantLength(int activity) =>
        frame.Activities[activity].Fixed is { } fact ? fact.End - fact.Start
        : frame.Work[activity] == 0 || frame.Activities[activity].Hours is null || !frame.Activities[activity].Breakable ? frame.Work[activity]
        : null;

    private int EndAt(int activity, int start, int addedWork = 0) =>
        addedWork > 0 ? frame.First(activity, start, addedWork)?.End ?? frame.Horizon + 1
        : ConstantLength(activity) is { } length ? start + length
        : ends[activity].At(start);

    private void AddOwnRules()
    {
        for (var i = 0; i < frame.Count; i++)
        {
            var activity = i;
            if (ConstantLength(i) is { } length)
            {
                lags.Add(Lag.Constant(i, Finish, length));
            }
            else
            {
                lags.Add(Lag.Of(i, Finish, s => EndAt(activity, s), least[i], most));
            }

            if (!frame.IsFixed[i] && (frame.Activities[i].NextStart is not null || (frame.Activities[i].Hours is not null && frame.Work[i] > 0)))
            {
                ownRules.Add(new OwnRule(i, new Remembered(s => frame.First(activity, s)?.Start ?? most + 1).At, least[i], most));
            }
        }
    }

    private void AddLinks()
    {
        foreach (var link in frame.Links)
        {
            if (frame.IsFixed[link.To])
            {
                continue;
            }

            if (link.Windows.Length == 1)
            {
                AddWindow(link, link.Windows[0], null);
                continue;
            }

            var choices = link.Windows.Select(_ => Bound.AtLeast(variables++, 1)).ToArray();
            clauses.Add(choices);
            for (var k = 0; k < choices.Length; k++)
            {
                AddWindow(link, link.Windows[k], choices[k]);
            }
        }
    }

    private void AddWindow(FrameLink link, Window window, Bound? condition)
    {
        var (from, to) = (link.From, link.To);
        if (ConstantAfterStart(from, window.Least) is { } minutes)
        {
            lags.Add(Lag.Constant(from, to, minutes, condition));
        }
        else
        {
            var opens = new Remembered(s => window.Least.After(new Placement(s, EndAt(from, s))));
            lags.Add(Lag.Of(from, to, opens.At, least[from], most, condition));
        }

        if (window.Most is not { } latest)
        {
            return;
        }

        var addedWork = frame.MostAddedWork[from];
        if (ConstantAfterStart(from, latest) is { } within && (addedWork == 0 || latest.Anchor == Anchor.Start))
        {
            lags.Add(Lag.Constant(to, from, -within, condition));
        }
        else
        {
            var closes = new Remembered(s => latest.After(new Placement(s, EndAt(from, s, addedWork))));
            lags.Add(Lag.AtMost(to, from, closes.At, least[from], most, condition));
        }
    }

    private int? ConstantAfterStart(int from, Wait wait) =>
        frame.IsFixed[from] ? wait.After(frame.Activities[from].Fixed!.Value) - least[from]
        : wait.Moment is not null ? null
        : wait.Anchor == Anchor.Start ? wait.Minutes
        : ConstantLength(from) is { } length ? length + wait.Minutes
        : null;

    private void AddResources()
    {
        for (var r = 0; r < frame.Capacity.Length; r++)
        {
            var stretches = StretchesOf(r);
            if (stretches.Sum(s => (long)s.Amount) <= frame.Capacity[r])
            {
                continue;
            }

            capacities.Add(new CapacityRule([.. stretches], frame.Capacity[r]));
            for (var a = 0; a < stretches.Count; a++)
            {
                for (var b = a + 1; b < stretches.Count; b++)
                {
                    if (stretches[a].Amount + stretches[b].Amount > frame.Capacity[r])
                    {
                        AddPair(stretches[a], stretches[b]);
                    }
                }
            }
        }
    }

    private List<Stretch> StretchesOf(int resource)
    {
        var stretches = new List<Stretch>();
        for (var i = 0; i < frame.Count; i++)
        {
            foreach (var demand in frame.Demands[i])
            {
                if (demand.Resource == resource && (frame.Work[i] > 0 || frame.IsFixed[i]))
                {
                    stretches.Add(NewStretch(i, i, demand.Amount, null));
                }
            }

            foreach (var h in frame.HoldsFrom[i])
            {
                var hold = frame.Holds[h];
                if (hold.Resource == resource)
                {
                    stretches.Add(NewStretch(i, hold.Until, hold.Amount, hold.Release is null ? null : hold.GivenBackAt));
                }
            }
        }

        return stretches;
    }

    private Stretch NewStretch(int from, int until, int amount, Func<int, int>? release)
    {
        if (ConstantLength(until) is { } length && (release is null || frame.IsFixed[until]))
        {
            var held = release is null ? length : release(frame.Activities[until].Fixed!.Value.End) - least[until];
            return new Stretch(from, until, amount, held, null, least[until], most);
        }

        var end = new Remembered(s => release is null ? EndAt(until, s) : release(EndAt(until, s)));
        return new Stretch(from, until, amount, 0, end.At, least[until], most);
    }

    // What an activity leaves meets many; each stretch is made once.
    private Stretch StretchOf(int activity, int number, Func<int, int>? release)
    {
        if (!present.TryGetValue((activity, number), out var stretch))
        {
            stretch = NewStretch(activity, activity, 1, release);
            present.Add((activity, number), stretch);
        }

        return stretch;
    }

    private void AddPair(Stretch a, Stretch b)
    {
        if (a.From == b.From || a.From == b.Until || a.Until == b.From || a.Until == b.Until)
        {
            return;
        }

        if (a.From == a.Until && b.From == b.Until)
        {
            if (PairOf(a.From, b.From) is { } pair)
            {
                lags.Add(AfterStretch(a, b.From, pair.FirstBefore));
                lags.Add(AfterStretch(b, a.From, pair.SecondBefore));
            }

            return;
        }

        var before = Bound.AtLeast(variables++, 1);
        lags.Add(AfterStretch(a, b.From, before));
        lags.Add(AfterStretch(b, a.From, before.Not));
    }

    private Lag AfterStretch(Stretch stretch, int next, Bound? condition) => stretch.ConstantMinutes is { } minutes
        ? Lag.Constant(stretch.Until, next, minutes, condition)
        : Lag.Of(stretch.Until, next, stretch.EndFor, least[stretch.Until], most, condition);

    // The two orders of a pair; without a condition where waits leave only one, which is then always asked for.
    private (Bound? FirstBefore, Bound? SecondBefore)? PairOf(int first, int second)
    {
        if (frame.IsFixed[first] && frame.IsFixed[second])
        {
            return null;
        }

        if (!pairs.TryGetValue((first, second), out var variable))
        {
            variable = variables++;
            pairs.Add((first, second), variable);
            if (distances.MustPrecede(first, second))
            {
                clauses.Add([Bound.AtLeast(variable, 1)]);
            }
            else if (distances.MustPrecede(second, first))
            {
                clauses.Add([Bound.AtMost(variable, 0)]);
            }
        }

        return (Bound.AtLeast(variable, 1), Bound.AtMost(variable, 0));
    }

    private void AddAvoidances()
    {
        for (var a = 0; a < frame.Count; a++)
        {
            foreach (var avoidance in frame.Activities[a].Avoids)
            {
                for (var b = 0; b < frame.Count; b++)
                {
                    if (a == b)
                    {
                        continue;
                    }

                    for (var p = 0; p < frame.Activities[b].Presences.Length; p++)
                    {
                        var presence = frame.Activities[b].Presences[p];
                        if (presence.Kind == avoidance.Kind && presence.Key != avoidance.ExceptKey)
                        {
                            AddAvoidance(a, b, p);
                        }
                    }
                }
            }
        }
    }

    private void AddAvoidance(int avoiding, int leaving, int number)
    {
        var presence = frame.Activities[leaving].Presences[number];
        var avoidsNothing = frame.Activities[avoiding].Fixed is { } fact ? fact.Start == fact.End : frame.Work[avoiding] == 0;
        if (avoidsNothing)
        {
            return;
        }

        if (frame.Work[leaving] == 0 && !frame.IsFixed[leaving])
        {
            IsRelaxed |= presence.Until is not null;
            return;
        }

        var stretch = StretchOf(leaving, number, presence.Until is null ? null : end => Frame.GoneAt(presence, end));
        var avoider = StretchOf(avoiding, -1, null);
        var (first, second) = avoiding < leaving ? (avoider, stretch) : (stretch, avoider);
        if (PairOf(first.From, second.From) is { } pair)
        {
            lags.Add(AfterStretch(first, second.From, pair.FirstBefore));
            lags.Add(AfterStretch(second, first.From, pair.SecondBefore));
        }
    }
}
