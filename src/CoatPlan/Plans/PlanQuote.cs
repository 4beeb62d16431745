namespace CoatPlan.Plans;

/// <summary>What a customer would be asked to pay. Lines add to the total to the cent.</summary>
/// <param name="Currency">ISO 4217 code.</param>
/// <param name="LabourH">Hours of labour.</param>
/// <param name="Labour">Labour.</param>
/// <param name="Materials">Materials before markup.</param>
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
    ImmutableArray<string> NotIncluded);
