namespace CoatPlan.Plans;

/// <summary>How much of one product the job takes.</summary>
/// <param name="Product">Key of the product.</param>
/// <param name="Name">Its name.</param>
/// <param name="LikelyMl">Likely demand before reserve, ml of contents; null where the contents are unknown.</param>
/// <param name="AreaCoatsM2">Area times coats, m², a mist coat counted half.</param>
/// <param name="Cans">Packages needed in all, reserve included.</param>
/// <param name="CansLow">Packages that cover 10 % of the draws without reserve.</param>
/// <param name="CansHigh">The larger of <paramref name="Cans"/> and what covers 90 % of the draws.</param>
/// <param name="Buy">Packages to buy, what is on the shelf taken off.</param>
/// <param name="Price">Price of what is bought, packs bought whole; null where unknown.</param>
/// <param name="Basis">What the demand rests on.</param>
/// <param name="Covered">For each number of packages around the likely one, the share of draws that it covers.</param>
public sealed record PlanSupply(
    string Product,
    string Name,
    double? LikelyMl,
    double AreaCoatsM2,
    int Cans,
    int CansLow,
    int CansHigh,
    int Buy,
    decimal? Price,
    PlanBasis Basis,
    ImmutableArray<PlanCovered> Covered)
{
    /// <summary>How many are sold together, 1 or more.</summary>
    public int Pack { get; init; } = 1;

    /// <summary>Packs to buy.</summary>
    public int Packs { get; init; }

    /// <summary>Times that the product is taken up anew.</summary>
    public int Sessions { get; init; }

    /// <summary>Packages that go into clearing the nozzle in all those sessions: the draws count them.</summary>
    public double ClearedCans { get; init; }

    /// <summary>Grams of ozone that the vapour of one package may form outdoors; null where the data sheet does not allow the sum.</summary>
    public double? OzonePerCanG { get; init; }

    /// <summary>Grams that one coat on a test panel of <see cref="PanelM2"/> should take; null where contents or coverage are unknown.</summary>
    public double? PanelGrams { get; init; }

    /// <summary>Area of that panel, m².</summary>
    public double PanelM2 { get; init; }
}
