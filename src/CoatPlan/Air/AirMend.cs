using UnitsNet;

namespace CoatPlan.Air;

/// <summary>What would bring a limit under that the plan passes.</summary>
/// <param name="Code">The warning that it goes with: over-limit, over-lel or over-idlh.</param>
/// <param name="Exhaust">Least exhaust at which it is not passed, the plan left as it is.</param>
/// <param name="AtATime">Where a coat alone is too much at the exhaust there is: the most of it that may be sprayed in one go.</param>
/// <param name="Between">Least time from the end of one such go to the start of the next, at the exhaust there is; null where no pause helps.</param>
public sealed record AirMend(string Code, VolumeFlow Exhaust, ImmutableArray<SprayAtATime> AtATime, Duration? Between);
