using CoatPlan.Problems;

namespace CoatPlan;

/// <summary>What came of reading a person's own preset files.</summary>
/// <param name="Trade">Null where there are problems.</param>
/// <param name="Problems">Each with its file, line and column; empty where all is well.</param>
public sealed record TradeReading(Trade? Trade, ImmutableArray<Problem> Problems);
