namespace CoatPlan.Scheduling;

/// <summary>A demand by index.</summary>
internal readonly record struct FrameDemand(int Resource, int Amount);
