using CoatPlan.Vapour;

namespace CoatPlan.Air;

/// <summary>A step of the plan that gives off vapour.</summary>
/// <param name="Step">Id of the step.</param>
/// <param name="Start">Its start, local wall time.</param>
/// <param name="End">Its end, not before its start.</param>
/// <param name="Release">What it gives off.</param>
public sealed record DatedRelease(string Step, LocalDateTime Start, LocalDateTime End, CoatRelease Release)
{
    /// <summary>Key of the product; empty where nobody asks for it.</summary>
    public string Product { get; init; } = "";

    /// <summary>Packages that go into the step; null where unknown.</summary>
    public double? Packages { get; init; }
}
