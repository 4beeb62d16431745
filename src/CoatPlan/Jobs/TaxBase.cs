namespace CoatPlan.Jobs;

/// <summary>What tax is laid on.</summary>
public enum TaxBase
{
    /// <summary>Materials only.</summary>
    Materials,

    /// <summary>Materials and labour.</summary>
    All,
}
