namespace CoatPlan.Scheduling;

/// <summary>About how long it takes from each activity's start to the end of all that follows it; used to rank, never to bound.</summary>
internal static class Tails
{
    public static long[] Of(Frame frame, GenerationOrder order, Heads heads)
    {
        var tails = new long[frame.Count];
        for (var s = order.Sequence.Length - 1; s >= 0; s--)
        {
            var i = order.Sequence[s];
            var at = heads[i];
            tails[i] = Math.Max(tails[i], at.End - at.Start);
            foreach (var l in frame.Outgoing[i])
            {
                var link = frame.Links[l];
                if (!frame.AlwaysSpeaks(link))
                {
                    continue;
                }

                tails[i] = Math.Max(tails[i], link.EarliestAfter(at) - at.Start + tails[link.To]);
            }
        }

        return tails;
    }
}
