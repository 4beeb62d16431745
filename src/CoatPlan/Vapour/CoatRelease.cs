namespace CoatPlan.Vapour;

/// <summary>What one coat gives off, and how fast the wet film lets go of it.</summary>
/// <param name="Solvents">Its solvents, in the order of their names.</param>
/// <param name="FilmTime">Time constant of the film, more than zero: after it the film holds 1/e of what was left in it.</param>
public sealed record CoatRelease(ImmutableArray<SolventRelease> Solvents, Duration FilmTime);
