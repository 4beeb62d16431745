namespace CoatPlan.Plans;

/// <summary>What a demand of paint rests on.</summary>
public enum PlanBasis
{
    /// <summary>The area one package covers.</summary>
    Covers,

    /// <summary>Volume solids and dry film.</summary>
    Solids,
}
