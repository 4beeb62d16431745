namespace CoatPlan.Scheduling;

/// <summary>Activities whose turn may come next, the lowest rank first, and those that are put aside until something is given back.</summary>
/// <param name="count">How many activities there are.</param>
internal sealed class ReadyQueue(int count)
{
    private const long BehindUrgent = 1L << 62;

    private readonly PriorityQueue<int, long> ready = new();
    private readonly List<int> parked = [];
    private readonly bool[] isQueued = new bool[count];

    /// <summary>The activity that was put aside first; null where none is.</summary>
    public int? FirstParked => parked.Count > 0 ? parked[0] : null;

    /// <summary>Nothing is queued or put aside.</summary>
    public void Clear()
    {
        ready.Clear();
        parked.Clear();
        Array.Clear(isQueued);
    }

    /// <summary>Whether an activity is in the queue.</summary>
    public bool Has(int activity) => isQueued[activity];

    /// <summary>Adds an activity that is not in the queue.</summary>
    /// <param name="activity">The activity.</param>
    /// <param name="rank">Its rank, 0 or more; of equal ones the lower activity comes first.</param>
    /// <param name="isUrgent">Whether it comes before all that are not.</param>
    public void Add(int activity, int rank, bool isUrgent)
    {
        isQueued[activity] = true;
        ready.Enqueue(activity, (isUrgent ? 0L : BehindUrgent) | ((long)rank << 32) | (uint)activity);
    }

    /// <summary>Takes the next.</summary>
    public bool TryTake(out int activity)
    {
        if (!ready.TryDequeue(out activity, out _))
        {
            return false;
        }

        isQueued[activity] = false;
        return true;
    }

    /// <summary>Puts an activity aside.</summary>
    public void Park(int activity) => parked.Add(activity);

    /// <summary>What was put aside, which it is no longer, in the order in which that came.</summary>
    public int[] Unpark()
    {
        if (parked.Count == 0)
        {
            return [];
        }

        int[] released = [.. parked];
        parked.Clear();
        return released;
    }
}
