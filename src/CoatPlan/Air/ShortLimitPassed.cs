using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>A limit for minutes, not hours, that the air passes.</summary>
/// <param name="Solvent">The solvent.</param>
/// <param name="Over">Over which time the limit holds: 15 min, or one minute for a ceiling.</param>
/// <param name="Mean">Highest mean over that time, by volume of air.</param>
/// <param name="Limit">The limit, by volume of air.</param>
public sealed record ShortLimitPassed(Solvent Solvent, Duration Over, Ratio Mean, Ratio Limit);
