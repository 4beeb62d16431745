namespace CoatPlan.Scheduling;

/// <summary>By what activities are put in order before anything is known of a schedule.</summary>
internal enum PriorityRule
{
    /// <summary>As the network has them.</summary>
    AsGiven,

    /// <summary>Chain by chain, the longest first: what is begun is brought to its end, so that little stands wet or half done at a time.</summary>
    LongestChain,

    /// <summary>What is alike together, that with the longest way to go on the average first.</summary>
    AlikeTogether,

    /// <summary>The longest way to go first.</summary>
    LongestTail,

    /// <summary>What may start first is first.</summary>
    EarliestStart,

    /// <summary>That on which most hangs first.</summary>
    MostFollowers,

    /// <summary>The greatest share of the resources first.</summary>
    LargestDemand,
}
