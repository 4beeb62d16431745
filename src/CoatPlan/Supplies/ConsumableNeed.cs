namespace CoatPlan.Supplies;

/// <summary>Something that is used up besides paint.</summary>
/// <param name="Item">What to ask for at the counter.</param>
/// <param name="Needed">How many the job takes, whole.</param>
/// <param name="Amount">How many to get: needed less what is on the shelf, whole, at least 0.</param>
/// <param name="Unit">What one is.</param>
/// <param name="Pack">How many are sold together, 1 or more.</param>
/// <param name="Why">What it is for and how it was counted.</param>
public sealed record ConsumableNeed(string Item, int Needed, int Amount, string Unit, int Pack, string Why);
