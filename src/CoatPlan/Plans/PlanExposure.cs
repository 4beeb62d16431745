namespace CoatPlan.Plans;

/// <summary>One solvent over the whole plan, ppm in the well-mixed room, beside its limits; null where nobody has set one.</summary>
/// <param name="Name">The solvent.</param>
/// <param name="PeakPpm">Highest one-minute mean.</param>
/// <param name="Mean15MinPpm">Highest mean over 15 min.</param>
/// <param name="Mean8HPpm">Highest mean over 8 h.</param>
/// <param name="LimitPpm">The lower of the legal and the recommended limit over 8 h.</param>
/// <param name="ShortTermPpm">Limit over 15 min.</param>
/// <param name="CeilingPpm">Limit at any time.</param>
/// <param name="IdlhPpm">Immediately dangerous to life or health.</param>
/// <param name="MaximumUsePpm">The most that the plan's respirator may be worn in; null too where it holds no vapour.</param>
public sealed record PlanExposure(
    string Name,
    double PeakPpm,
    double Mean15MinPpm,
    double Mean8HPpm,
    double? LimitPpm,
    double? ShortTermPpm,
    double? CeilingPpm,
    double? IdlhPpm,
    double? MaximumUsePpm);
