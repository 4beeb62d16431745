namespace CoatPlan.Scheduling;

/// <summary>Directed edges between nodes that are numbered from 0: each once, those of a node in the order of where they lead.</summary>
internal sealed class Edges
{
    private readonly int[] firsts;
    private readonly int[] targets;

    private Edges(int[] firsts, int[] targets)
    {
        this.firsts = firsts;
        this.targets = targets;
    }

    /// <summary>How many nodes there are.</summary>
    public int Count => firsts.Length - 1;

    /// <summary>Where the edges of a node lead.</summary>
    public ReadOnlySpan<int> From(int node) => targets.AsSpan(firsts[node]..firsts[node + 1]);

    /// <summary>Edges in any order, in which one may be named more than once.</summary>
    /// <param name="count">How many nodes there are.</param>
    /// <param name="edges">The edges; brought into order here.</param>
    public static Edges Of(int count, List<(int From, int To)> edges)
    {
        var keys = new long[edges.Count];
        for (var e = 0; e < keys.Length; e++)
        {
            keys[e] = ((long)edges[e].From << 32) | (uint)edges[e].To;
        }

        Array.Sort(keys);
        var firsts = new int[count + 1];
        var targets = new List<int>(keys.Length);
        for (var e = 0; e < keys.Length; e++)
        {
            if (e == 0 || keys[e] != keys[e - 1])
            {
                targets.Add((int)keys[e]);
                firsts[(int)(keys[e] >> 32) + 1]++;
            }
        }

        for (var node = 0; node < count; node++)
        {
            firsts[node + 1] += firsts[node];
        }

        return new Edges(firsts, [.. targets]);
    }
}
