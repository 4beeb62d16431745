namespace CoatPlan.Jobs;

/// <summary>A single value.</summary>
/// <param name="Text">The text, without quotes.</param>
public sealed record TextValue(string Text) : JobValue;
