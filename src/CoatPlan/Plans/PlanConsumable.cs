namespace CoatPlan.Plans;

/// <summary>Something that is used up besides paint.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Amount">How much to get, what is on the shelf taken off, at least 0.</param>
/// <param name="Unit">In which unit.</param>
/// <param name="Why">What it is for and how it was counted.</param>
public sealed record PlanConsumable(string Item, double Amount, string Unit, string Why)
{
    /// <summary>How much the job takes, the shelf left out of account.</summary>
    public double Needed { get; init; }

    /// <summary>How many are sold together, 1 or more.</summary>
    public int Pack { get; init; } = 1;

    /// <summary>Packs to buy.</summary>
    public int Packs { get; init; }

    /// <summary>Price of those packs; null where unknown.</summary>
    public decimal? Price { get; init; }

    /// <summary>Key of its row in the presets; empty where it has none.</summary>
    public string Word { get; init; } = "";
}
