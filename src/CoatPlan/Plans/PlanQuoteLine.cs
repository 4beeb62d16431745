namespace CoatPlan.Plans;

/// <summary>The part of a quote that goes with one surface, so that a customer can drop it.</summary>
/// <param name="Surface">Id of the surface.</param>
/// <param name="Labour">Labour, with its share of the work for the whole job.</param>
/// <param name="Materials">Materials before markup.</param>
public sealed record PlanQuoteLine(string Surface, decimal Labour, decimal Materials)
{
    /// <summary>Markup on the materials.</summary>
    public decimal Markup { get; init; }

    /// <summary>Tax.</summary>
    public decimal Tax { get; init; }

    /// <summary>All of it.</summary>
    public decimal Total => Labour + Materials + Markup + Tax;
}
