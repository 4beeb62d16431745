namespace CoatPlan.Timetable;

/// <summary>A stretch inside the working hours in which somebody has nothing to do.</summary>
/// <param name="From">Its start.</param>
/// <param name="To">Its end, after its start.</param>
/// <param name="Station">The station, from 1; null where the job has one crew.</param>
/// <param name="People">How many people have nothing to do, 1 or more.</param>
/// <param name="Why">What is waited for.</param>
public sealed record IdleStretch(LocalDateTime From, LocalDateTime To, int? Station, int People, string Why);
