namespace CoatPlan.Prep;

/// <summary>The hands-on time of an operation on all pieces of one surface.</summary>
/// <param name="Surface">Id of the surface.</param>
/// <param name="Hands">Hands-on time, whole seconds, rest included.</param>
public sealed record SurfaceWork(string Surface, Duration Hands);
