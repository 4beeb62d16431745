namespace CoatPlan.Prep;

/// <summary>Something that will go wrong unless the job is changed, with what to do instead.</summary>
/// <param name="Code">The contract's code, as in <c>needs-primer</c>.</param>
/// <param name="Surface">Id of the surface it is about; none: the whole job.</param>
/// <param name="Product">Key of the product it is about; none: no single one.</param>
/// <param name="Text">What is wrong, why, and what to do instead.</param>
public sealed record Warning(string Code, string? Surface, string? Product, string Text);
