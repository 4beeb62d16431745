namespace CoatPlan.Scheduling.Exact;

/// <summary>
/// Which decision to try next: the one that took part in the newest contradictions, the way the best schedule had it; before there were any,
/// the earliest start of what could start first.
/// </summary>
internal sealed class Guide
{
    private const double Decay = 1 / 0.95;

    private readonly Trail trail;
    private readonly int starts;
    private readonly int variables;
    private readonly Dictionary<Bound, int> questions = [];
    private readonly List<Bound> bounds = [];
    private readonly List<double> weights = [];
    private readonly List<int> places = [];
    private readonly List<int> heap = [];
    private readonly List<int>[] asleep;
    private readonly bool[] hasShrunk;
    private readonly List<int> shrunk = [];
    private readonly int[] saved;
    private double step = 1;

    /// <summary>A guide over variables of which the first so many are starts.</summary>
    public Guide(Trail trail, int starts, int variables)
    {
        this.trail = trail;
        this.starts = starts;
        this.variables = variables;
        asleep = [.. Enumerable.Range(0, variables).Select(_ => new List<int>())];
        hasShrunk = new bool[variables];
        saved = new int[variables];
        Array.Fill(saved, int.MinValue);
    }

    /// <summary>Remembers where variables stand, to be tried again.</summary>
    public void Remember()
    {
        for (var v = 0; v < variables; v++)
        {
            saved[v] = trail.Least(v);
        }
    }

    /// <summary>Remembers a start to be tried.</summary>
    public void Remember(int variable, int value) => saved[variable] = value;

    /// <summary>Takes note of a bound in a learnt clause.</summary>
    public void Note(Bound bound)
    {
        var question = (bound.Side & 1) == 0 ? bound : bound.Not;
        if (!questions.TryGetValue(question, out var index))
        {
            index = bounds.Count;
            questions.Add(question, index);
            bounds.Add(question);
            weights.Add(0);
            places.Add(-1);
            asleep[question.Variable].Add(index);
            Shrunk(question.Side);
        }

        weights[index] += step;
        if (weights[index] > 1e100)
        {
            Rescale();
        }

        if (places[index] >= 0)
        {
            Up(places[index]);
        }
    }

    /// <summary>Lets older contradictions count for less.</summary>
    public void Age() => step *= Decay;

    /// <summary>Takes note of a side that went back.</summary>
    public void Shrunk(int side)
    {
        var variable = side >> 1;
        if (!hasShrunk[variable])
        {
            hasShrunk[variable] = true;
            shrunk.Add(variable);
        }
    }

    /// <summary>The next decision; null when everything is decided.</summary>
    public Bound? Next()
    {
        Wake();
        while (heap.Count > 0)
        {
            var index = Pop();
            var bound = bounds[index];
            if (trail.Holds(bound) || trail.Fails(bound))
            {
                asleep[bound.Variable].Add(index);
                continue;
            }

            // It may be undecided again before its side goes back below where it is now.
            asleep[bound.Variable].Add(index);
            var value = saved[bound.Variable];
            return value >= bound.Value ? bound : bound.Not;
        }

        return Earliest();
    }

    private Bound? Earliest()
    {
        var next = -1;
        for (var v = 0; v < starts; v++)
        {
            if (!trail.IsFixed(v) && (next < 0 || (trail.Least(v), trail.Most(v)).CompareTo((trail.Least(next), trail.Most(next))) < 0))
            {
                next = v;
            }
        }

        if (next >= 0)
        {
            return Bound.AtMost(next, trail.Least(next));
        }

        for (var v = starts; v < variables; v++)
        {
            if (!trail.IsFixed(v))
            {
                return Bound.AtMost(v, trail.Least(v));
            }
        }

        return null;
    }

    private void Wake()
    {
        foreach (var variable in shrunk)
        {
            hasShrunk[variable] = false;
            var sleepers = asleep[variable];
            var kept = 0;
            for (var s = 0; s < sleepers.Count; s++)
            {
                var index = sleepers[s];
                if (trail.Holds(bounds[index]) || trail.Fails(bounds[index]))
                {
                    sleepers[kept++] = index;
                }
                else if (places[index] < 0)
                {
                    places[index] = heap.Count;
                    heap.Add(index);
                    Up(places[index]);
                }
            }

            sleepers.RemoveRange(kept, sleepers.Count - kept);
        }

        shrunk.Clear();
    }

    private void Rescale()
    {
        for (var i = 0; i < weights.Count; i++)
        {
            weights[i] *= 1e-100;
        }

        step *= 1e-100;
    }

    private int Pop()
    {
        var top = heap[0];
        places[top] = -1;
        var last = heap[^1];
        heap.RemoveAt(heap.Count - 1);
        if (heap.Count > 0)
        {
            heap[0] = last;
            places[last] = 0;
            Down(0);
        }

        return top;
    }

    private void Up(int at)
    {
        var index = heap[at];
        while (at > 0 && weights[heap[(at - 1) / 2]] < weights[index])
        {
            heap[at] = heap[(at - 1) / 2];
            places[heap[at]] = at;
            at = (at - 1) / 2;
        }

        heap[at] = index;
        places[index] = at;
    }

    private void Down(int at)
    {
        var index = heap[at];
        while (true)
        {
            var child = (2 * at) + 1;
            if (child >= heap.Count)
            {
                break;
            }

            if (child + 1 < heap.Count && weights[heap[child + 1]] > weights[heap[child]])
            {
                child++;
            }

            if (weights[heap[child]] <= weights[index])
            {
                break;
            }

            heap[at] = heap[child];
            places[heap[at]] = at;
            at = child;
        }

        heap[at] = index;
        places[index] = at;
    }
}
