namespace CoatPlan.Air;

/// <summary>How much of a coat may be sprayed in one go.</summary>
/// <param name="Product">Key of the product.</param>
/// <param name="Step">Id of its heaviest step.</param>
/// <param name="Packages">The most packages in one go, more than zero; null where the package's contents are unknown.</param>
/// <param name="Goes">Goes that the step is split into, 2 or more, each alike.</param>
public sealed record SprayAtATime(string Product, string Step, double? Packages, int Goes);
