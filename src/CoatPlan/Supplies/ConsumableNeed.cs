namespace CoatPlan.Supplies;

/// <summary>Something that is used up besides paint.</summary>
/// <param name="Word">Key of its row in the presets.</param>
/// <param name="Item">What to ask for at the counter.</param>
/// <param name="Needed">How many the job takes, whole.</param>
/// <param name="Amount">How many to get: needed less what is on the shelf, whole, at least 0.</param>
/// <param name="Unit">What one is.</param>
/// <param name="Pack">How many are sold together, 1 or more.</param>
/// <param name="Packs">Packs to buy for it: the fewest that hold <paramref name="Amount"/>, beyond what is left of those bought for another need under one name.</param>
/// <param name="Price">Price of those packs; null where nobody gave one and something is bought.</param>
/// <param name="Why">What it is for and how it was counted.</param>
public sealed record ConsumableNeed(
    string Word, string Item, int Needed, int Amount, string Unit, int Pack, int Packs, decimal? Price, string Why);
