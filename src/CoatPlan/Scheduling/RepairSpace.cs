namespace CoatPlan.Scheduling;

/// <summary>What is present over time, and who must not meet it, for what a run has placed: few enough that each is looked at.</summary>
internal sealed class RepairSpace
{
    private readonly RepairFrame frame;
    private readonly Entry[][] present;
    private readonly Entry[][] avoiding;
    private readonly int[] presentCount;
    private readonly int[] avoidingCount;

    public RepairSpace(RepairFrame frame)
    {
        this.frame = frame;
        present = Entries(frame.Leavers);
        avoiding = Entries(frame.Avoiders);
        presentCount = new int[present.Length];
        avoidingCount = new int[avoiding.Length];
    }

    public void Clear()
    {
        Array.Clear(presentCount);
        Array.Clear(avoidingCount);
    }

    public void Add(int activity, Placement at, int pace)
    {
        foreach (var presence in frame.Presences[activity])
        {
            Add(present[presence.Kind], ref presentCount[presence.Kind], at.Start, presence.GoneAt(pace, at.End), activity, presence.Key);
        }

        foreach (var avoidance in frame.Avoids[activity])
        {
            Add(avoiding[avoidance.Kind], ref avoidingCount[avoidance.Kind], at.Start, at.End, activity, avoidance.ExceptKey);
        }
    }

    /// <summary>Takes back what was added last, which must be of this activity.</summary>
    public void TakeBack(int activity)
    {
        foreach (var presence in frame.Presences[activity])
        {
            presentCount[presence.Kind]--;
        }

        foreach (var avoidance in frame.Avoids[activity])
        {
            avoidingCount[avoidance.Kind]--;
        }
    }

    /// <summary>The start itself when nothing is in the way of a placement; otherwise a minute before which no later start is clear.</summary>
    public int ClearFrom(int activity, Placement at, int pace)
    {
        var clear = at.Start;
        foreach (var avoidance in frame.Avoids[activity])
        {
            clear = Math.Max(clear, Clear(present[avoidance.Kind], presentCount[avoidance.Kind], at.Start, at.End, activity, avoidance.ExceptKey));
        }

        foreach (var presence in frame.Presences[activity])
        {
            // When it is gone is asked only where something that avoids it lasts so long.
            if (avoidingCount[presence.Kind] is > 0 and var count && avoiding[presence.Kind][count - 1].LatestEnd > at.Start)
            {
                clear = Math.Max(clear, Clear(avoiding[presence.Kind], count, at.Start, presence.GoneAt(pace, at.End), activity, presence.Key));
            }
        }

        return clear;
    }

    private static void Add(Entry[] entries, ref int count, int start, int end, int activity, int? mark)
    {
        var latest = count == 0 ? end : Math.Max(end, entries[count - 1].LatestEnd);
        entries[count++] = new Entry(start, end, latest, activity, mark ?? 0, mark is not null);
    }

    // Newest first: work goes on in time, and soon nothing that was there before reaches this far.
    private static int Clear(Entry[] entries, int count, int start, int end, int activity, int? mark)
    {
        var clear = start;
        for (var i = count - 1; i >= 0 && entries[i].LatestEnd > start; i--)
        {
            ref readonly var entry = ref entries[i];
            if (entry.Start < end && entry.End > start && entry.End > clear && entry.Activity != activity && end > start && entry.End > entry.Start
                && !(mark is not null && entry.HasMark && entry.Mark == mark.Value))
            {
                clear = entry.End;
            }
        }

        return clear;
    }

    private static Entry[][] Entries(int[] counts) => [.. counts.Select(count => new Entry[count])];

    private readonly record struct Entry(int Start, int End, int LatestEnd, int Activity, int Mark, bool HasMark);
}
