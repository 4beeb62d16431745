namespace CoatPlan.Outlook;

/// <summary>What something costs that goes otherwise than planned.</summary>
/// <param name="What">A kind of work, a product's drying, the weather.</param>
/// <param name="Minutes">By how many minutes the finish would be earlier, on the average of the draws, had it gone as planned.</param>
public sealed record ChanceCost(string What, double Minutes);
