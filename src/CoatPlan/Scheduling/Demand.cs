namespace CoatPlan.Scheduling;

/// <summary>What an activity occupies from its start to its end, breaks included.</summary>
/// <param name="Resource">The name of a <see cref="Scheduling.Resource"/>.</param>
/// <param name="Amount">Units held, 0 or more.</param>
public sealed record Demand(string Resource, int Amount);
