namespace CoatPlan.Plans;

/// <summary>A rule that stands in a job's way.</summary>
/// <param name="Rule">
/// <c>finish-by</c>, <c>hours</c>, <c>people</c>, <c>spray-spots</c>, <c>rack</c>, <c>tape-limit</c>, <c>done</c>, <c>night</c>, <c>rain</c>, <c>wind</c>, <c>forecast-end</c>, or of a
/// label <c>air-low</c>, <c>air-high</c>, <c>surface-low</c>, <c>surface-high</c>, <c>humidity-low</c>, <c>humidity-high</c>, <c>above-dew</c>, <c>window</c>.
/// </param>
/// <param name="Product">Key of the product whose label it is; null for other rules.</param>
public sealed record PlanRule(string Rule, string? Product);
