namespace CoatPlan.Scheduling;

/// <summary>A hold by index, with the minute at which it is given back at each pace.</summary>
internal sealed record RepairHold(int Resource, int Amount, int From, int Until, Remembered?[] Release)
{
    /// <summary>When the capacity is given back, for an end of the last activity.</summary>
    public int GivenBackAt(int pace, int end) => Release[pace] is { } release ? Math.Max(end, release.At(end)) : end;
}
