namespace CoatPlan.Plans;

/// <summary>The person hours of one kind of work.</summary>
/// <param name="Operation">An operation word of the contract.</param>
/// <param name="H">Person hours.</param>
public sealed record PlanHours(string Operation, double H);
