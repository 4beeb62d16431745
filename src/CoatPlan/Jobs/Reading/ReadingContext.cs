using CoatPlan.Problems;

namespace CoatPlan.Jobs.Reading;

/// <summary>What every part of a reading shares: where problems go, and the words that are known.</summary>
internal sealed record ReadingContext(ProblemList Problems, Vocabulary Vocabulary);
