namespace CoatPlan.Plans;

/// <summary>A surface as planned.</summary>
/// <param name="Id">The surface's id, unique in the job.</param>
/// <param name="Name">The name the person gave it.</param>
/// <param name="Count">Pieces, at least 1.</param>
/// <param name="AreaM2">Area of one piece, relief included, in m², more than zero.</param>
/// <param name="Relief">True area over outline area, at least 1.</param>
/// <param name="Material">A material word of the contract.</param>
/// <param name="Finish">An old-finish word of the contract.</param>
/// <param name="Condition">Condition words of the contract.</param>
/// <param name="System">Key of the paint system.</param>
/// <param name="Stays">Whether it stays on the vehicle.</param>
/// <param name="Tag">Number of its tag when it comes off, from 1; null for what stays.</param>
/// <param name="ReadyAt">When the last film on it can be handled; null where a coat could not be placed.</param>
/// <param name="Cans">Packages of all its coatings, likely, before pooling with other surfaces.</param>
public sealed record PlanSurface(
    string Id,
    string Name,
    int Count,
    double AreaM2,
    double Relief,
    string Material,
    string Finish,
    ImmutableArray<string> Condition,
    string System,
    bool Stays,
    int? Tag,
    LocalDateTime? ReadyAt,
    double Cans);
