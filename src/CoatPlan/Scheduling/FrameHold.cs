namespace CoatPlan.Scheduling;

/// <summary>A hold by index.</summary>
internal sealed record FrameHold(int Resource, int Amount, int From, int Until, Func<int, int>? Release)
{
    /// <summary>When the capacity is given back, for an end of the last activity.</summary>
    public int GivenBackAt(int end) => Release is null ? end : Math.Max(end, Release(end));
}
