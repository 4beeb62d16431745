namespace CoatPlan.Climate;

/// <summary>Why a coat may not start at some minute.</summary>
/// <param name="Rule">The rule that would be broken.</param>
/// <param name="Asked">The start that was asked about, minutes from the job's start.</param>
/// <param name="From">The first minute at which the rule would be broken; later than <paramref name="Asked"/> where the film would still be wet then.</param>
/// <param name="Until">The first minute after <paramref name="From"/> at which it no longer is; null: not within the horizon.</param>
/// <param name="Measured">What would be read at <paramref name="From"/>: °C, a share, K above the dew point, m/s or mm; 0 without meaning.</param>
/// <param name="Limit">What the rule asks, in the same unit; 0 without meaning.</param>
public sealed record StartHindrance(StartRule Rule, int Asked, int From, int? Until, double Measured, double Limit);
