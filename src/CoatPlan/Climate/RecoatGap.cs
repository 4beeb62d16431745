namespace CoatPlan.Climate;

/// <summary>What goes over the coat before.</summary>
public enum RecoatGap
{
    /// <summary>The next coat of the same product.</summary>
    Itself,

    /// <summary>Another product.</summary>
    Another,
}
