namespace CoatPlan.Scheduling;

/// <summary>Stretches of time with a mark each, sorted by start, in which those that meet a given stretch are found quickly.</summary>
internal sealed class Timeline
{
    private Entry[] entries = new Entry[8];
    private int count;
    private int longest;

    public void Clear()
    {
        count = 0;
        longest = 0;
    }

    public void Add(int start, int end, int activity, int? mark)
    {
        if (end <= start)
        {
            return;
        }

        if (count == entries.Length)
        {
            Array.Resize(ref entries, count * 2);
        }

        var at = FirstStartingAfter(start);
        Array.Copy(entries, at, entries, at + 1, count - at);
        entries[at] = new Entry(start, end, activity, mark);
        count++;
        longest = Math.Max(longest, end - start);
    }

    public void Remove(int start, int end, int activity, int? mark)
    {
        if (end <= start)
        {
            return;
        }

        var entry = new Entry(start, end, activity, mark);
        for (var i = FirstStartingAfter(start) - 1; i >= 0 && entries[i].Start == start; i--)
        {
            if (entries[i] == entry)
            {
                count--;
                Array.Copy(entries, i + 1, entries, i, count - i);
                return;
            }
        }
    }

    /// <summary>The latest end among what others put here, with a mark that differs or is absent, and that meets [start, end); else the start.</summary>
    public int ClearFrom(int start, int end, int activity, int? harmless)
    {
        var clear = start;
        if (end <= start)
        {
            return clear;
        }

        for (var i = FirstStartingAfter(start - longest - 1); i < count && entries[i].Start < end; i++)
        {
            ref readonly var entry = ref entries[i];
            if (entry.End > clear && entry.End > start && entry.Activity != activity && (harmless is null || entry.Mark != harmless))
            {
                clear = entry.End;
            }
        }

        return clear;
    }

    private int FirstStartingAfter(int time)
    {
        var low = 0;
        var high = count;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (entries[middle].Start > time)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return low;
    }

    private readonly record struct Entry(int Start, int End, int Activity, int? Mark);
}
