namespace CoatPlan.Scheduling;

/// <summary>How much of one resource is in use over time: a step function whose steps of equal height are joined.</summary>
internal sealed class Profile
{
    /// <summary>The end of something whose end is not known yet.</summary>
    public const int Never = int.MaxValue;

    private int[] times = new int[16];
    private int[] levels = new int[16];
    private int count;

    public Profile()
    {
        Clear();
    }

    public void Clear()
    {
        count = 1;
        times[0] = int.MinValue;
        levels[0] = 0;
    }

    /// <summary>Adds an amount, which may be negative, over [start, end).</summary>
    public void Add(int start, int end, int amount)
    {
        if (end <= start || amount == 0)
        {
            return;
        }

        var first = StepStartingAt(start);
        var last = end == Never ? count : StepStartingAt(end);
        for (var i = first; i < last; i++)
        {
            levels[i] += amount;
        }

        JoinAt(last);
        JoinAt(first);
    }

    /// <summary>
    /// The start itself when an amount fits under the capacity over [start, end); otherwise the end of the last stretch that is too full,
    /// before which no later start can fit either. <see cref="Never"/> when that stretch has no end.
    /// </summary>
    public int FreeFrom(int start, int end, int amount, int capacity)
    {
        if (end <= start)
        {
            return start;
        }

        var limit = capacity - amount;
        var free = start;
        for (var i = StepAt(start); i < count && times[i] < end; i++)
        {
            if (levels[i] > limit)
            {
                free = i + 1 < count ? times[i + 1] : Never;
            }
        }

        return free;
    }

    private int StepAt(int time)
    {
        var low = 0;
        var high = count - 1;
        while (low < high)
        {
            var middle = (low + high + 1) >>> 1;
            if (times[middle] <= time)
            {
                low = middle;
            }
            else
            {
                high = middle - 1;
            }
        }

        return low;
    }

    private int StepStartingAt(int time)
    {
        var at = StepAt(time);
        if (times[at] == time)
        {
            return at;
        }

        if (count == times.Length)
        {
            Array.Resize(ref times, count * 2);
            Array.Resize(ref levels, count * 2);
        }

        Array.Copy(times, at + 1, times, at + 2, count - at - 1);
        Array.Copy(levels, at + 1, levels, at + 2, count - at - 1);
        times[at + 1] = time;
        levels[at + 1] = levels[at];
        count++;
        return at + 1;
    }

    private void JoinAt(int step)
    {
        if (step <= 0 || step >= count || levels[step] != levels[step - 1])
        {
            return;
        }

        Array.Copy(times, step + 1, times, step, count - step - 1);
        Array.Copy(levels, step + 1, levels, step, count - step - 1);
        count--;
    }
}
