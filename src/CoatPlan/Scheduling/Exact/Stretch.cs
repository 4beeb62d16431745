namespace CoatPlan.Scheduling.Exact;

/// <summary>An amount of a resource from the start of one activity until some time after the start of the same or another.</summary>
internal sealed class Stretch(int from, int until, int amount, int minutes, Func<int, int>? end, int least, int most)
{
    public int From { get; } = from;

    public int Until { get; } = until;

    public int Amount { get; } = amount;

    /// <summary>The minutes for which it is held after the start of the last activity, where that is a constant.</summary>
    public int? ConstantMinutes => end is null ? minutes : null;

    /// <summary>When it is given back, for a start of the last activity.</summary>
    public int EndFor(int start) => end is null ? start + minutes : end(start);

    /// <summary>The least start of the last activity for which the amount is still held during a minute.</summary>
    public int StartHolding(int minute)
    {
        if (end is null)
        {
            return minute - minutes + 1;
        }

        var low = least;
        var high = most + 1;
        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            if (end(middle) > minute)
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
}
