namespace CoatPlan.Plans;

/// <summary>Something that is used up besides paint.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Amount">How much, at least 0.</param>
/// <param name="Unit">In which unit.</param>
/// <param name="Why">What it is for and how it was counted.</param>
public sealed record PlanConsumable(string Item, double Amount, string Unit, string Why);
