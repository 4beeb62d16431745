namespace CoatPlan.Plans;

/// <summary>How a coat is laid with a can or a gun, in metres.</summary>
/// <param name="FanM">Width of one pass.</param>
/// <param name="SpacingM">From the middle of one pass to the middle of the next: the width less what passes overlap by.</param>
/// <param name="DistanceM">Nozzle to surface.</param>
public sealed record PlanPasses(double FanM, double SpacingM, double DistanceM);
