namespace CoatPlan.Supplies;

/// <summary>Hands-on work of one kind that goes with one surface, or with the job as a whole.</summary>
/// <param name="Surface">Id of the surface; null for work that is no single surface's.</param>
/// <param name="Operation">Word of the operation; coats are <c>coat</c>.</param>
/// <param name="Hands">Person time, all people and stations, at least 0.</param>
public sealed record WorkHours(string? Surface, string Operation, Duration Hands);
