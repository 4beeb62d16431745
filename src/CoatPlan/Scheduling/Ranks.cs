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
