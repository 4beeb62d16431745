namespace CoatPlan.Supplies;

/// <summary>The part of a quote that goes with one surface, so that a customer can drop it.</summary>
/// <param name="Surface">Id of the surface.</param>
/// <param name="Labour">Labour, with its share of the work for the whole job.</param>
/// <param name="Materials">Materials before markup.</param>
/// <param name="Markup">Markup on them.</param>
/// <param name="Tax">Tax.</param>
public sealed record QuoteLine(string Surface, decimal Labour, decimal Materials, decimal Markup, decimal Tax)
{
    /// <summary>All of it.</summary>
    public decimal Total => Labour + Materials + Markup + Tax;
}
