namespace CoatPlan.Tests.Docs;

/// <summary>A table of a page.</summary>
/// <param name="Head">Its heads.</param>
/// <param name="Rows">Its rows, cell by cell.</param>
/// <param name="BlocksBefore">How many fenced blocks stand before it.</param>
internal sealed record DocsTable(ImmutableArray<string> Head, ImmutableArray<ImmutableArray<string>> Rows, int BlocksBefore);
