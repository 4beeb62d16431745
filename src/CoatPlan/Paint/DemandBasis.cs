namespace CoatPlan.Paint;

/// <summary>What a demand of paint rests on.</summary>
public enum DemandBasis
{
    /// <summary>The area that the label says one package covers.</summary>
    Covers,

    /// <summary>Volume solids, dry film and loss.</summary>
    Solids,
}
