namespace CoatPlan.Scheduling;

/// <summary>An activity may not overlap a presence of this kind left by any other activity, whichever of the two comes first.</summary>
/// <param name="Kind">The kind of <see cref="Presence"/> to keep clear of.</param>
/// <param name="ExceptKey">Presences with this key do no harm; null means that all do.</param>
public sealed record Avoidance(int Kind, int? ExceptKey = null);
