namespace CoatPlan.Scheduling.Exact;

/// <summary>What made a bound grow: enough to explain it later.</summary>
internal readonly record struct Cause(CauseKind Kind, int Index = 0)
{
    public static Cause Decision => new(CauseKind.Decision);
}
