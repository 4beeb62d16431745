namespace CoatPlan.Scheduling;

/// <summary>A pass in the order of a priority rule.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="UrgentFirst">Whether what has a window that is closing comes before everything else.</param>
/// <param name="Sparing">Whether last resorts are done without: what they are counted from comes later until another window is open.</param>
internal readonly record struct RuleRun(PriorityRule Rule, bool UrgentFirst, bool Sparing)
{
    /// <summary>
    /// The passes, in the order in which they are worth making: a quick plan makes only the first few. No rule is best for all jobs; these are in the order in which, taken together,
    /// they came nearest to the best of all rules in every way, over 1,650 jobs of up to 960 activities. After the first four the finish is 2 to 8 hours behind the best on the average, by size,
    /// after ten 0.1 to 2. Those below are for a search with time enough.
    /// </summary>
    public static ImmutableArray<RuleRun> All { get; } =
    [
        new(PriorityRule.MostFollowers, UrgentFirst: false, Sparing: false),
        new(PriorityRule.LongestTail, UrgentFirst: true, Sparing: true),
        new(PriorityRule.LongestChain, UrgentFirst: true, Sparing: false),
        new(PriorityRule.MostFollowers, UrgentFirst: true, Sparing: true),
        new(PriorityRule.EarliestStart, UrgentFirst: true, Sparing: false),
        new(PriorityRule.AlikeTogether, UrgentFirst: false, Sparing: true),
        new(PriorityRule.LargestDemand, UrgentFirst: true, Sparing: false),
        new(PriorityRule.LongestTail, UrgentFirst: false, Sparing: false),
        new(PriorityRule.MostFollowers, UrgentFirst: false, Sparing: true),
        new(PriorityRule.EarliestStart, UrgentFirst: false, Sparing: true),

        new(PriorityRule.AsGiven, UrgentFirst: false, Sparing: false),
        new(PriorityRule.AlikeTogether, UrgentFirst: true, Sparing: false),
        new(PriorityRule.LongestChain, UrgentFirst: false, Sparing: false),
        new(PriorityRule.LargestDemand, UrgentFirst: false, Sparing: false),
        new(PriorityRule.AsGiven, UrgentFirst: true, Sparing: false),
    ];
}
