namespace CoatPlan.Plans;

/// <summary>The part of a quote that goes with one surface.</summary>
/// <param name="Surface">Id of the surface.</param>
/// <param name="Labour">Labour.</param>
/// <param name="Materials">Materials before markup.</param>
public sealed record PlanQuoteLine(string Surface, decimal Labour, decimal Materials);
