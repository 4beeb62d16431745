namespace CoatPlan.Scheduling;

/// <summary>How much of one resource is in use over time: a step function whose steps of equal height are joined.</summary>
internal sealed class Profile
{
    /// <summary>The end of something whose end is not known yet.</summary>
    public const int Never = int.MaxValue;

    // Most of what is moved is a few steps at the end, and a loop is over before a block move has begun.
    private const int ShortMove = 24;

    // So many steps from the end are looked at one by one before the rest is halved.
    private const int Nearby = 6;

    private Step[] steps = new Step[16];
    private int count;

    public Profile()
    {
        Clear();
    }

    public void Clear()
    {
        count = 1;
        steps[0] = new Step(int.MinValue, 0);
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
            steps[i].Level += amount;
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
        for (var i = StepAt(start); i < count && steps[i].Time < end; i++)
        {
            if (steps[i].Level > limit)
            {
                free = i + 1 < count ? steps[i + 1].Time : Never;
            }
        }

        return free;
    }

    private int StepAt(int time)
    {
        // Work is mostly placed at the end of what is there already.
        var last = count - 1;
        for (var look = Math.Max(0, last - Nearby); last > look; last--)
        {
            if (steps[last].Time <= time)
            {
                return last;
            }
        }

        var low = 0;
        var high = last;
        while (low < high)
        {
            var middle = (low + high + 1) >>> 1;
            if (steps[middle].Time <= time)
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
        if (steps[at].Time == time)
        {
            return at;
        }

        if (count == steps.Length)
        {
            Array.Resize(ref steps, count * 2);
        }

        if (count - at > ShortMove)
        {
            Array.Copy(steps, at + 1, steps, at + 2, count - at - 1);
        }
        else
        {
            for (var i = count; i > at + 1; i--)
            {
                steps[i] = steps[i - 1];
            }
        }

        steps[at + 1] = new Step(time, steps[at].Level);
        count++;
        return at + 1;
    }

    private void JoinAt(int step)
    {
        if (step <= 0 || step >= count || steps[step].Level != steps[step - 1].Level)
        {
            return;
        }

        count--;
        if (count - step > ShortMove)
        {
            Array.Copy(steps, step + 1, steps, step, count - step);
            return;
        }

        for (var i = step; i < count; i++)
        {
            steps[i] = steps[i + 1];
        }
    }

    private struct Step(int time, int level)
    {
        public readonly int Time = time;

        public int Level = level;
    }
}
