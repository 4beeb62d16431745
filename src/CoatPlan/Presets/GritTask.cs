namespace CoatPlan.Presets;

/// <summary>Which P grits a task takes.</summary>
/// <param name="Word">Such as <c>feather</c>.</param>
/// <param name="Title">The task in words.</param>
/// <param name="Coarsest">Where it begins.</param>
/// <param name="Finest">Where it ends; the same where one grit does.</param>
/// <param name="Pad">Non-woven pad that does as well; empty where none does.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record GritTask(string Word, string Title, int Coarsest, int Finest, string Pad, Provenance Provenance);
