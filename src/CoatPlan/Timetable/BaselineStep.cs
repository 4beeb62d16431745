namespace CoatPlan.Timetable;

/// <summary>A step of a plan before a change.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Surfaces">Ids of its surfaces; empty for work on the whole job.</param>
/// <param name="Batch">Its batch; null for work on the whole job.</param>
/// <param name="Station">The station of a class; null where the job has one crew.</param>
/// <param name="Start">When it began.</param>
/// <param name="End">When it ended.</param>
/// <param name="HandsMinutes">Hands-on time, minutes.</param>
internal sealed record BaselineStep(string Id, ImmutableArray<string> Surfaces, string? Batch, int? Station, LocalDateTime Start, LocalDateTime End, double HandsMinutes);
