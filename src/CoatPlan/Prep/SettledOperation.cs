namespace CoatPlan.Prep;

/// <summary>That an operation is done on a surface, and what asked for it.</summary>
/// <param name="Word">The contract's word.</param>
/// <param name="Way">How it is done; null: its only way.</param>
/// <param name="Reasons">Rules with a why, in the order of the file; at least one.</param>
/// <param name="Notes">Rules with a note.</param>
internal sealed record SettledOperation(string Word, PrepWay? Way, ImmutableArray<PrepRule> Reasons, ImmutableArray<PrepRule> Notes);
