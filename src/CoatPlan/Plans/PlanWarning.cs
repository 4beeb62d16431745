namespace CoatPlan.Plans;

/// <summary>Something likely to go wrong, with what to do instead.</summary>
/// <param name="Code">A warning code of the contract.</param>
/// <param name="Surface">Id of the surface; null where it concerns none.</param>
/// <param name="Product">Key of the product; null where it concerns none.</param>
/// <param name="Text">What it is and what to do instead.</param>
public sealed record PlanWarning(string Code, string? Surface, string? Product, string Text);
