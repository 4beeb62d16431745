namespace CoatPlan.Scheduling;

/// <summary>Orders in which activities may be taken when a schedule is generated.</summary>
internal static class Ranks
{
    /// <summary>The order in which activities start in a schedule.</summary>
    public static int[] ByStart(Schedule schedule, int[] before)
    {
        var sequence = new int[before.Length];
        var keys = new long[before.Length];
        for (var i = 0; i < before.Length; i++)
        {
            sequence[i] = i;
            keys[i] = ((long)schedule.Placements[i].Start << 32) | (uint)before[i];
        }

        Array.Sort(keys, sequence);
        return InOrder(sequence);
    }

    /// <summary>The order in which activities began in another schedule; what did not comes next after those it waits for.</summary>
    /// <param name="starts">For each activity the minute at which it began; null for one that did not.</param>
    /// <param name="order">What must be placed before what.</param>
    public static int[] Near(ImmutableArray<int?> starts, GenerationOrder order)
    {
        var keys = new (int Start, int Place)[starts.Length];
        for (var s = 0; s < order.Sequence.Length; s++)
        {
            var i = order.Sequence[s];
            keys[i] = (Math.Max(keys[i].Start, starts[i] ?? 0), s);
            foreach (var follower in order.Followers[i])
            {
                keys[follower].Start = starts[follower] is null ? Math.Max(keys[follower].Start, keys[i].Start) : 0;
            }
        }

        return InOrder(Enumerable.Range(0, keys.Length).OrderBy(i => keys[i]));
    }

    /// <summary>For each activity its place in an order.</summary>
    public static int[] InOrder(IEnumerable<int> order)
    {
        var sequence = order.ToArray();
        var ranks = new int[sequence.Length];
        for (var i = 0; i < sequence.Length; i++)
        {
            ranks[sequence[i]] = i;
        }

        return ranks;
    }
}
