namespace CoatPlan.Scheduling.Exact;

/// <summary>The bounds of all variables, in the order in which they grew, so that they can be taken back and explained.</summary>
internal sealed class Trail
{
    private readonly int[] values;
    private readonly int[] latest;
    private readonly List<int> levelStarts = [];
    private Entry[] entries = new Entry[1024];

    public Trail(int variables)
    {
        values = new int[2 * variables];
        latest = new int[2 * variables];
        Array.Fill(latest, -1);
    }

    public int Count { get; private set; }

    /// <summary>How many decisions stand.</summary>
    public int Level => levelStarts.Count;

    /// <summary>Where the entries of the newest decision begin.</summary>
    public int LevelStart => levelStarts.Count == 0 ? 0 : levelStarts[^1];

    public ref readonly Entry this[int position] => ref entries[position];

    public int Value(int side) => values[side];

    public int Least(int variable) => values[2 * variable];

    public int Most(int variable) => -values[(2 * variable) + 1];

    public bool IsFixed(int variable) => values[2 * variable] == -values[(2 * variable) + 1];

    public bool Holds(Bound bound) => values[bound.Side] >= bound.Value;

    public bool Fails(Bound bound) => values[bound.Side ^ 1] >= 1 - bound.Value;

    /// <summary>Sets the range of a variable before anything else is known.</summary>
    public void Begin(int variable, int least, int most)
    {
        values[2 * variable] = least;
        values[(2 * variable) + 1] = -most;
    }

    public void Decide() => levelStarts.Add(Count);

    /// <summary>Lets a side grow to a value; the caller sees to it that the value is greater than the present one.</summary>
    public void Grow(Bound bound, Cause cause)
    {
        if (Count == entries.Length)
        {
            Array.Resize(ref entries, 2 * Count);
        }

        entries[Count] = new Entry(bound.Side, values[bound.Side], bound.Value, cause, latest[bound.Side]);
        latest[bound.Side] = Count++;
        values[bound.Side] = bound.Value;
    }

    /// <summary>Where a bound that holds came to hold; −1 when it was given.</summary>
    public int PositionOf(Bound bound)
    {
        var position = latest[bound.Side];
        while (position >= 0 && entries[position].Before >= bound.Value)
        {
            position = entries[position].Previous;
        }

        return position;
    }

    public int LevelOf(int position)
    {
        var low = 0;
        var high = levelStarts.Count;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (levelStarts[middle] <= position)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    /// <summary>Takes back all decisions above a level, telling each side that shrinks.</summary>
    public void BackTo(int level, Action<int> shrunk)
    {
        if (level >= Level)
        {
            return;
        }

        var start = levelStarts[level];
        while (Count > start)
        {
            ref readonly var entry = ref entries[--Count];
            values[entry.Side] = entry.Before;
            latest[entry.Side] = entry.Previous;
            shrunk(entry.Side);
        }

        levelStarts.RemoveRange(level, levelStarts.Count - level);
    }

    /// <summary>A side that grew from one value to another, why, and where it had grown before.</summary>
    internal readonly record struct Entry(int Side, int Before, int After, Cause Cause, int Previous);
}
