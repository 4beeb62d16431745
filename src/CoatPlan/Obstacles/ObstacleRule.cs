namespace CoatPlan.Obstacles;

/// <summary>A rule that a job must keep and a trial can leave out.</summary>
/// <param name="Code">A stable word for the rule, such as <c>air-low</c>.</param>
/// <param name="Product">Key of the product whose label says it; null for other rules.</param>
/// <param name="LeftOut">From an ask to the same without the rule.</param>
internal sealed record ObstacleRule(string Code, string? Product, Func<Ask, Ask> LeftOut);
