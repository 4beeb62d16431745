namespace CoatPlan.Jobs;

/// <summary>A list of values.</summary>
/// <param name="Items">The items in order.</param>
public sealed record ListValue(ImmutableArray<JobValue> Items) : JobValue;
