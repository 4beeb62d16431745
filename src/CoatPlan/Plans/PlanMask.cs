namespace CoatPlan.Plans;

/// <summary>Something that must not be painted.</summary>
/// <param name="Surface">Id of the surface it belongs to.</param>
/// <param name="What">What it is, as the person wrote it, or that all around is covered where a surface is sprayed in place and nothing was named.</param>
/// <param name="Kind">A mask kind of the contract; null where none was given.</param>
/// <param name="EdgeM">Length of tape on one piece, m; null where none was given.</param>
/// <param name="AreaM2">Area of film on one piece, m²; null where none was given.</param>
public sealed record PlanMask(string Surface, string What, string? Kind, double? EdgeM, double? AreaM2);
