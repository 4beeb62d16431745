namespace CoatPlan.Scheduling;

/// <summary>
/// The earliest placement of each activity that calendars, start rules and windows permit when resources and avoidances are set aside:
/// the critical path through calendars. Raised from below until nothing moves, so every value is a bound at any time.
/// </summary>
internal sealed class Heads
{
    private readonly Frame frame;
    private readonly GenerationOrder order;
    private readonly Placement[] earliest;

    private Heads(Frame frame, GenerationOrder order)
    {
        this.frame = frame;
        this.order = order;
        earliest = new Placement[frame.Count];
    }

    /// <summary>Why there can be no schedule; null when the bounds leave room.</summary>
    public Blockage? Blockage { get; private set; }

    public Placement this[int activity] => earliest[activity];

    /// <summary>The latest of the earliest ends.</summary>
    public int Finish { get; private set; }

    /// <summary>The earliest placements of a network.</summary>
    /// <param name="frame">The network.</param>
    /// <param name="order">Of the network; most activities are raised once where each comes after those it waits for.</param>
    public static Heads Of(Frame frame, GenerationOrder order)
    {
        var heads = new Heads(frame, order);
        heads.Raise();
        for (var i = 0; i < frame.Count; i++)
        {
            heads.Finish = frame.AskedBy[i] < 0 ? Math.Max(heads.Finish, heads.earliest[i].End) : heads.Finish;
        }

        return heads;
    }

    private void Raise()
    {
        for (var i = 0; i < frame.Count; i++)
        {
            if (frame.First(i, int.MinValue) is not { } first)
            {
                if (frame.AskedBy[i] >= 0)
                {
                    continue;
                }

                Blockage = Explain.NeverFits(frame, i, int.MinValue);
                return;
            }

            earliest[i] = first;
        }

        var waiting = new Queue<int>(order.Sequence);
        var isWaiting = new bool[frame.Count];
        Array.Fill(isWaiting, true);

        // Round a cycle of windows and calendars the bounds may creep up a minute at a time; they are bounds wherever this stops.
        var budget = 20_000 + (50 * frame.Links.Length);
        while (budget > 0 && Blockage is null && waiting.TryDequeue(out var i))
        {
            isWaiting[i] = false;
            foreach (var l in frame.Outgoing[i])
            {
                budget--;
                var link = frame.Links[l];
                if (!frame.IsFixed[link.To] && link.Unless.Length == 0 && frame.AskedBy[i] < 0)
                {
                    RaiseTo(link.To, link.EarliestAfter(earliest[i]), l);
                }
            }

            foreach (var l in frame.Incoming[i])
            {
                budget--;
                var link = frame.Links[l];
                if (!frame.IsFixed[link.To] && link.Unless.Length == 0 && frame.AskedBy[i] < 0 && Array.TrueForAll(link.Windows, w => w.Most is not null))
                {
                    RaiseTo(link.From, LatestAnchor(link, earliest[i].Start), l);
                }
            }
        }

        void RaiseTo(int activity, int start, int link)
        {
            if (start <= earliest[activity].Start || Blockage is not null)
            {
                return;
            }

            // What never fits but need not be done stands in nobody's way.
            if (frame.AskedBy[activity] >= 0 && frame.First(activity, start) is null)
            {
                return;
            }

            if (frame.IsFixed[activity] || frame.First(activity, start) is not { } raised)
            {
                Blockage = frame.IsFixed[activity]
                    ? Explain.MissedWindow(frame, frame.Links[link].To, link, earliest[frame.Links[link].To].Start)
                    : Explain.NeverFits(frame, activity, start);
                return;
            }

            earliest[activity] = raised;
            if (!isWaiting[activity])
            {
                isWaiting[activity] = true;
                waiting.Enqueue(activity);
            }
        }
    }

    // Added work ends the earlier activity later and may keep a window open longer; the bound allows for all of it.
    private int LatestAnchor(FrameLink link, int start) =>
        Windows.AnchorFor(frame, link, earliest[link.From].Start, start, addedWork: frame.MostAddedWork[link.From]);
}
