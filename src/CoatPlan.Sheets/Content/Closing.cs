namespace CoatPlan.Sheets.Content;

/// <summary>What a sheet closes with; on paper it stands at the foot of every page, since pages get separated.</summary>
/// <param name="Text">The text.</param>
public sealed record Closing(string Text) : Block;
