namespace CoatPlan.Scheduling.Exact;

/// <summary>Bounds of which at least one holds in every schedule that is still looked for. The first two are watched.</summary>
internal sealed class Clause(Bound[] bounds, int levels)
{
    public Bound[] Bounds { get; } = bounds;

    /// <summary>From how many decisions it was learnt; the fewer, the more it is worth keeping.</summary>
    public int Levels { get; } = levels;

    public bool IsDropped { get; set; }
}
