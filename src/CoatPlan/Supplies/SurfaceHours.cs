namespace CoatPlan.Supplies;

/// <summary>Hands-on work that goes with one surface.</summary>
/// <param name="Surface">Id of the surface.</param>
/// <param name="Hands">Person time, all people and stations, at least 0.</param>
public sealed record SurfaceHours(string Surface, Duration Hands);
