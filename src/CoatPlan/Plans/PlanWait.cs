namespace CoatPlan.Plans;

/// <summary>A wait between two steps, counted from the earlier step's end; the most counted from its start, since its first piece was wet first.</summary>
/// <param name="Step">Id of the earlier step.</param>
/// <param name="Stage">The stage waited for.</param>
/// <param name="LabelMin">The label's time at the label's own conditions, minutes; null where no label speaks.</param>
/// <param name="LeastMin">The time in the plan's conditions, minutes, rounded up; null for none.</param>
/// <param name="MostMin">What the window in use leaves, minutes, rounded down; null where it stays open.</param>
public sealed record PlanWait(string Step, PlanStage Stage, double? LabelMin, double? LeastMin, double? MostMin);
