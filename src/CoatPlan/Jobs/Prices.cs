using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>What a quote counts with.</summary>
public sealed record Prices
{
    /// <summary>Price of one hour of labour; null: not said.</summary>
    public decimal? LabourPerHour { get; init; }

    /// <summary>Share added to materials, 0 or more.</summary>
    public Ratio Markup { get; init; } = Ratio.Zero;

    /// <summary>Tax, as a share.</summary>
    public Ratio Tax { get; init; } = Ratio.Zero;

    /// <summary>What tax is laid on.</summary>
    public TaxBase TaxOn { get; init; } = TaxBase.Materials;

    /// <summary>ISO 4217 code.</summary>
    public string Currency { get; init; } = JobDefaults.Currency;

    /// <summary>Prices of what is used up besides paint, in the order of the file.</summary>
    public ImmutableArray<ConsumablePrice> Consumables { get; init; } = [];

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
