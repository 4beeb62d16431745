namespace CoatPlan.Scheduling;

/// <summary>A presence by index, with the minute at which it is gone at each pace.</summary>
internal sealed record RepairPresence(int Kind, int Key, Remembered?[] Until)
{
    /// <summary>When it is over, for an activity that ends at a minute.</summary>
    public int GoneAt(int pace, int end) => Until[pace] is { } until ? Math.Max(end, until.At(end)) : end;
}
