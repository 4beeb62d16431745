namespace CoatPlan.Plans;

/// <summary>The air from a step's start to the end of its purge, with everything that is wet counted.</summary>
/// <param name="Step">Id of the step.</param>
/// <param name="PeakPpm">Highest one-minute mean of each solvent, ppm, by name.</param>
/// <param name="MixtureRatio">Highest Σ C/limit.</param>
/// <param name="LelRatio">Highest Σ C/LEL, 0 to 1 and above.</param>
/// <param name="PurgeMin">Minutes of exhaust after the step until Σ C/limit is under 1; null where it never is.</param>
public sealed record PlanAirStep(
    string Step, ImmutableSortedDictionary<string, double> PeakPpm, double MixtureRatio, double LelRatio, double? PurgeMin);
