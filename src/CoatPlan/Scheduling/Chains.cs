namespace CoatPlan.Scheduling;

/// <summary>Which activities hang together by windows that close: moved in time, they move as one.</summary>
internal static class Chains
{
    /// <summary>The members of each chain of two or more, facts left out.</summary>
    public static int[][] Of(Frame frame)
    {
        var leader = Enumerable.Range(0, frame.Count).ToArray();
        foreach (var link in frame.Links)
        {
            if ((link.Closes || link.IsChoice) && link.Unless.Length == 0)
            {
                leader[Find(link.To)] = Find(link.From);
                foreach (var asked in link.Asked)
                {
                    leader[Find(asked)] = Find(link.From);
                }
            }
        }

        return
        [
            .. Enumerable.Range(0, frame.Count)
                .Where(i => !frame.IsFixed[i])
                .GroupBy(Find)
                .Select(chain => chain.ToArray())
                .Where(chain => chain.Length > 1),
        ];

        int Find(int i)
        {
            while (leader[i] != i)
            {
                leader[i] = leader[leader[i]];
                i = leader[i];
            }

            return i;
        }
    }
}
