namespace CoatPlan.Scheduling;

/// <summary>Orders in which activities may be taken when a schedule is generated.</summary>
internal static class Ranks
{
    /// <summary>How many priority rules there are.</summary>
    public const int RuleCount = 7;

    /// <summary>The orders of the usual priority rules, the most promising first.</summary>
    public static IEnumerable<int[]> ByRules(Frame frame, GenerationOrder order, Heads heads)
    {
        var tails = Tails.Of(frame, order, heads);
        var followers = FollowersInAll(frame, order);
        var all = Enumerable.Range(0, frame.Count).ToArray();

        // Chain by chain, the longest first: what is begun is brought to its end, so that little stands wet or half done at a time.
        yield return InOrder(all.OrderByDescending(i => tails[i] + heads[i].Start).ThenByDescending(i => tails[i]));
        var groupTails = GroupTails(frame, tails);
        yield return InOrder(all.OrderByDescending(i => groupTails[i]).ThenByDescending(i => tails[i] + heads[i].Start).ThenByDescending(i => tails[i]));
        yield return InOrder(all.OrderByDescending(i => tails[i]));
        yield return InOrder(all);
        yield return InOrder(all.OrderBy(i => heads[i].Start).ThenByDescending(i => tails[i]));
        yield return InOrder(all.OrderByDescending(i => followers[i]).ThenByDescending(i => tails[i]));
        yield return InOrder(all.OrderByDescending(i => frame.Demands[i].Sum(d => (double)d.Amount / Math.Max(1, frame.Capacity[d.Resource]))));
    }

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

    // The mean of those alike; its own for one that is like no other.
    private static double[] GroupTails(Frame frame, long[] tails)
    {
        var groups = Alike.Groups(frame);
        var means = Enumerable.Range(0, frame.Count).Where(i => groups[i] >= 0).GroupBy(i => groups[i]).ToDictionary(g => g.Key, g => g.Average(i => tails[i]));
        return [.. tails.Select((t, i) => groups[i] < 0 ? t : means[groups[i]])];
    }

    // How much hangs on each, counted along every path; a rank needs no more than that.
    private static double[] FollowersInAll(Frame frame, GenerationOrder order)
    {
        var inAll = new double[frame.Count];
        for (var s = order.Sequence.Length - 1; s >= 0; s--)
        {
            var i = order.Sequence[s];
            foreach (var follower in order.Followers[i])
            {
                inAll[i] += 1 + inAll[follower];
            }
        }

        return inAll;
    }
}
