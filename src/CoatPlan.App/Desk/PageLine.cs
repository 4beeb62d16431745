namespace CoatPlan.App.Desk;

/// <summary>A line of a page, wrapped where it is too long.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Lead">What hangs out to its left; empty for nothing.</param>
/// <param name="Text">Its text.</param>
internal sealed record PageLine(PageLineKind Kind, string Lead, string Text);
