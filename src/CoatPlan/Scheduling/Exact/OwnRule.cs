namespace CoatPlan.Scheduling.Exact;

/// <summary>The starts that an activity's hours and start rule leave: from any minute, the next one permitted.</summary>
internal sealed class OwnRule(int variable, Func<int, int> next, int least, int most)
{
    public int Variable { get; } = variable;

    /// <summary>The first permitted start at or after a minute; past everything when there is none.</summary>
    public int Next(int minute) => minute > most ? most + 1 : Math.Min(most + 1, next(minute));

    /// <summary>The last permitted start at or before a minute.</summary>
    public int Last(int minute)
    {
        // The largest minute whose next permitted start is not past it is itself permitted.
        var low = least - 1;
        var high = minute;
        while (low < high)
        {
            var middle = low + ((high - low + 1) / 2);
            if (Next(middle) <= minute)
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

    /// <summary>What explains a bound that this rule made grow: the weakest bound inside the same gap.</summary>
    public Bound Explain(Bound bound) => (bound.Side & 1) == 0
        ? Bound.AtLeast(Variable, Last(bound.Value - 1) + 1)
        : Bound.AtMost(Variable, Next(-bound.Value + 1) - 1);
}
