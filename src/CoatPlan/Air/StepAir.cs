namespace CoatPlan.Air;

/// <summary>The air from a step's start to the end of its purge, with everything counted that is wet then.</summary>
/// <param name="Step">Id of the step.</param>
/// <param name="Peaks">Highest one-minute mean of each solvent that is in the air, by name.</param>
/// <param name="MixtureRatio">Highest one-minute mean of Σ C/limit, over the solvents that have a limit.</param>
/// <param name="LelRatio">Highest one-minute mean of Σ C/LEL, over the solvents that burn.</param>
/// <param name="Purge">Time after the step until Σ C/limit stays under 1, whole minutes; null where it never does.</param>
public sealed record StepAir(string Step, ImmutableArray<SolventPeak> Peaks, double MixtureRatio, double LelRatio, Duration? Purge);
