namespace CoatPlan.Plans;

/// <summary>The air of the work place at a moment, for the curves of the timeline, in °C.</summary>
/// <param name="At">Local wall time: the job's start, every full hour after it, and the finish.</param>
/// <param name="AirC">Air.</param>
/// <param name="SurfaceC">The coldest piece of the job.</param>
/// <param name="DewPointC">Dew point of the air, never above it.</param>
public sealed record PlanAirAt(LocalDateTime At, double AirC, double SurfaceC, double DewPointC);
