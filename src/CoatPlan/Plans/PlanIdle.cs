namespace CoatPlan.Plans;

/// <summary>A stretch inside the working hours in which somebody has nothing to do.</summary>
/// <remarks>
/// From the start (or <c>as-of</c>) to the finish the stretches and the minutes in which people work fill the working hours, set-up and put-away taken off.
/// </remarks>
/// <param name="From">Local wall time at which it begins.</param>
/// <param name="To">Local wall time at which it ends.</param>
/// <param name="Station">The station of a class, from 1; null where the job has one crew.</param>
/// <param name="People">How many people have nothing to do, 1 or more.</param>
/// <param name="Why">What is waited for.</param>
public sealed record PlanIdle(LocalDateTime From, LocalDateTime To, int? Station, int People, string Why);
