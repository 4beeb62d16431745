namespace CoatPlan.App.Desk;

/// <summary>An answer that is read and closed again.</summary>
/// <param name="Title">What it answers.</param>
/// <param name="Lines">The answer.</param>
internal sealed record TextPage(string Title, ImmutableArray<PageLine> Lines);
