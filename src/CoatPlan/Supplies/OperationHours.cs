namespace CoatPlan.Supplies;

/// <summary>The person hours of one kind of work.</summary>
/// <param name="Operation">Word of the operation; coats are <c>coat</c>.</param>
/// <param name="Hours">Person hours, at least 0.</param>
public sealed record OperationHours(string Operation, double Hours);
