namespace CoatPlan.Scheduling;

/// <summary>The orders into which priority rules put the activities of a network, each worked out when it is first asked for.</summary>
internal sealed class PriorityRules
{
    private readonly Frame frame;
    private readonly GenerationOrder order;
    private readonly Heads heads;
    private readonly int[] groups;
    private readonly long[] tails;
    private readonly Dictionary<PriorityRule, int[]> known = [];

    /// <summary>The rules for a network.</summary>
    /// <param name="frame">The network.</param>
    /// <param name="order">What must be placed before what.</param>
    /// <param name="heads">Its earliest placements.</param>
    /// <param name="groups">Which activities are alike, as in <see cref="Alike.Groups"/>.</param>
    public PriorityRules(Frame frame, GenerationOrder order, Heads heads, int[] groups)
    {
        this.frame = frame;
        this.order = order;
        this.heads = heads;
        this.groups = groups;
        tails = Tails.Of(frame, order, heads);
    }

    /// <summary>For each activity its place in the order of a rule; of equals the one that the network has first comes first.</summary>
    public int[] Ranks(PriorityRule rule)
    {
        if (!known.TryGetValue(rule, out var ranks))
        {
            ranks = RanksBy(rule);
            known.Add(rule, ranks);
        }

        return ranks;
    }

    private int[] RanksBy(PriorityRule rule)
    {
        switch (rule)
        {
            case PriorityRule.LongestChain:
                return Falling(Through, i => tails[i]);
            case PriorityRule.AlikeTogether:
                var means = GroupTails();
                return Falling(i => groups[i] < 0 ? tails[i] : means[groups[i]], Through, i => tails[i]);
            case PriorityRule.LongestTail:
                return Falling(i => tails[i]);
            case PriorityRule.EarliestStart:
                return Falling(i => -heads[i].Start, i => tails[i]);
            case PriorityRule.MostFollowers:
                var inAll = FollowersInAll();
                return Falling(i => inAll[i], i => tails[i]);
            case PriorityRule.LargestDemand:
                return Falling(i => frame.Demands[i].Sum(d => (double)d.Amount / Math.Max(1, frame.Capacity[d.Resource])));
            default:
                return Falling(i => -i);
        }
    }

    // From the beginning to the end of the longest chain that leads through an activity.
    private double Through(int activity) => tails[activity] + heads[activity].Start;

    private int[] Falling(Func<int, double> first, Func<int, double>? second = null, Func<int, double>? third = null)
    {
        var keys = new (double First, double Second, double Third, int Activity)[frame.Count];
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] = (-first(i), -(second?.Invoke(i) ?? 0), -(third?.Invoke(i) ?? 0), i);
        }

        Array.Sort(keys);
        return Scheduling.Ranks.InOrder(keys.Select(key => key.Activity));
    }

    private double[] GroupTails()
    {
        var groupCount = groups.Append(-1).Max() + 1;
        var (sums, members) = (new double[groupCount], new int[groupCount]);
        for (var i = 0; i < groups.Length; i++)
        {
            if (groups[i] >= 0)
            {
                sums[groups[i]] += tails[i];
                members[groups[i]]++;
            }
        }

        return [.. sums.Zip(members, (sum, count) => sum / count)];
    }

    // How much hangs on each, counted along every path; a rank needs no more than that.
    private double[] FollowersInAll()
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
