namespace CoatPlan.Scheduling;

/// <summary>Which activities must be placed before which when a schedule is generated one activity at a time.</summary>
internal sealed class GenerationOrder
{
    private GenerationOrder(int[][] followers, int[] leaders, int[] sequence)
    {
        Followers = followers;
        Leaders = leaders;
        Sequence = sequence;
    }

    /// <summary>For each activity, those that wait for it.</summary>
    public int[][] Followers { get; }

    /// <summary>For each activity, how many it waits for.</summary>
    public int[] Leaders { get; }

    /// <summary>All activities, each after those it waits for.</summary>
    public int[] Sequence { get; }

    public static GenerationOrder Of(Frame frame)
    {
        var edges = new List<(int From, int To)>();
        var ties = new List<(int From, int To)>();
        foreach (var link in frame.Links)
        {
            if (link.From == link.To)
            {
                continue;
            }

            foreach (var asked in link.Asked)
            {
                edges.Add((link.From, asked));
                edges.Add((asked, link.To));
            }

            var lag = link.ConstantLag(frame.Work);
            if (lag is null or > 0 || link.IsChoice || Array.Exists(link.Windows, w => w.AddedWork > 0))
            {
                edges.Add((link.From, link.To));
            }
            else if (lag == 0)
            {
                ties.Add((link.From, link.To));
            }
        }

        // "No earlier than" both ways round means "together"; such ties, and any that would close a cycle, put nobody first.
        var component = Components.Of(Edges.Of(frame.Count, [.. edges, .. ties]));
        edges.AddRange(ties.Where(t => component[t.From] != component[t.To]));
        return Break(Edges.Of(frame.Count, edges));
    }

    private static GenerationOrder Break(Edges edges)
    {
        var count = edges.Count;
        var missing = new int[count];
        for (var i = 0; i < count; i++)
        {
            foreach (var follower in edges.From(i))
            {
                missing[follower]++;
            }
        }

        var sequence = new List<int>(count);
        var ready = new Queue<int>(Enumerable.Range(0, count).Where(i => missing[i] == 0));
        var done = new bool[count];
        for (var next = 0; sequence.Count < count;)
        {
            if (ready.TryDequeue(out var i))
            {
                done[i] = true;
                sequence.Add(i);
                foreach (var follower in edges.From(i))
                {
                    if (--missing[follower] == 0 && !done[follower])
                    {
                        ready.Enqueue(follower);
                    }
                }
            }
            else
            {
                // A cycle: the first of it goes first, and waits for nobody.
                while (done[next])
                {
                    next++;
                }

                missing[next] = 0;
                ready.Enqueue(next);
            }
        }

        var position = new int[count];
        for (var i = 0; i < count; i++)
        {
            position[sequence[i]] = i;
        }

        var leaders = new int[count];
        var followers = new int[count][];
        var kept = new List<int>();
        for (var i = 0; i < count; i++)
        {
            kept.Clear();
            foreach (var follower in edges.From(i))
            {
                if (position[follower] > position[i])
                {
                    kept.Add(follower);
                    leaders[follower]++;
                }
            }

            followers[i] = [.. kept];
        }

        return new GenerationOrder(followers, leaders, [.. sequence]);
    }
}
