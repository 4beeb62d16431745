namespace CoatPlan.Plans;

/// <summary>The most of a product that may be sprayed in one go.</summary>
/// <param name="Product">Key of the product.</param>
/// <param name="Cans">Packages; null where the package's contents are unknown.</param>
/// <param name="Goes">Goes that its heaviest coat is split into.</param>
public sealed record PlanAtATime(string Product, double? Cans, int Goes);
