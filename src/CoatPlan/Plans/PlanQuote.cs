namespace CoatPlan.Plans;

/// <summary>What a customer would be asked to pay. Every column of the lines adds to its sum, and the sums to the total, to the minor unit of the currency.</summary>
/// <param name="Currency">ISO 4217 code.</param>
/// <param name="LabourH">Hours of labour.</param>
/// <param name="Labour">Labour.</param>
/// <param name="Materials">Materials before markup: paint and consumables.</param>
/// <param name="Markup">Markup on materials.</param>
/// <param name="Tax">Tax.</param>
/// <param name="Total">Everything.</param>
/// <param name="Low">The total where all goes well.</param>
/// <param name="High">The total where little does.</param>
/// <param name="Lines">A line a surface.</param>
/// <param name="NotIncluded">What the total leaves out, a sentence each.</param>
public sealed record PlanQuote(
    string Currency,
    double LabourH,
    decimal Labour,
    decimal Materials,
    decimal Markup,
    decimal Tax,
    decimal Total,
    decimal Low,
    decimal High,
    ImmutableArray<PlanQuoteLine> Lines,
    ImmutableArray<string> NotIncluded)
{
    /// <summary>Price of one hour of labour.</summary>
    public decimal PerHour { get; init; }

    /// <summary>Paint, a part of <see cref="Materials"/>.</summary>
    public decimal Paint { get; init; }

    /// <summary>What is used up besides paint, the other part of <see cref="Materials"/>.</summary>
    public decimal Consumables { get; init; }

    /// <summary>The hours by kind of work, in the order in which each first comes; they add to <see cref="LabourH"/>.</summary>
    public ImmutableArray<PlanHours> Hours { get; init; } = [];
}
