namespace CoatPlan.Plans;

/// <summary>What the sheets print of a label.</summary>
/// <param name="Product">Key of the product.</param>
/// <param name="Name">Its name.</param>
/// <param name="Hazards">Hazard words of the contract.</param>
/// <param name="LabelSays">The label's own words, as the person copied them.</param>
/// <param name="Recoat">The windows for the next coat of its own, in words.</param>
/// <param name="Topcoat">The windows for another product over it, in words.</param>
/// <param name="UseWithin">Pot life in words; null for none.</param>
public sealed record PlanLabel(
    string Product,
    string Name,
    ImmutableArray<string> Hazards,
    ImmutableArray<string> LabelSays,
    string Recoat,
    string Topcoat,
    string? UseWithin);
