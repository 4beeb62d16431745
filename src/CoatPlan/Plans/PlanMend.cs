namespace CoatPlan.Plans;

/// <summary>What would bring a limit under that the plan passes, worked out by running the room again.</summary>
/// <param name="Code">The warning that it goes with.</param>
/// <param name="ExhaustM3PerMin">Least exhaust at which it is not passed.</param>
/// <param name="AtATime">The most that may be sprayed in one go with the exhaust there is, where a coat alone is too much.</param>
/// <param name="BetweenMin">Least minutes from the end of one go to the start of the next with the exhaust there is; null where a day is not enough.</param>
public sealed record PlanMend(string Code, double ExhaustM3PerMin, ImmutableArray<PlanAtATime> AtATime, double? BetweenMin);
