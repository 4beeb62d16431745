namespace CoatPlan.Jobs;

/// <summary>One map or list of a job file: what is in it and what could be.</summary>
/// <param name="Path">The way to it.</param>
/// <param name="Rows">Its values: those of a map with known keys in the order of the contract, set or not; otherwise those that are written there.</param>
/// <param name="TakesKeys">Whether values can be added under keys of the person's choice.</param>
/// <param name="TakesItems">Whether items can be added.</param>
/// <param name="Item">The kind of what can be added.</param>
/// <param name="Example">An example of what can be added; empty for a map or a list.</param>
public sealed record Outline(JobPath Path, ImmutableArray<OutlineRow> Rows, bool TakesKeys, bool TakesItems, OutlineKind Item, string Example);
