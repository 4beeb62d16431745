namespace CoatPlan.Sheets.Content;

/// <summary>What follows begins on paper of its own, which can be handed out alone.</summary>
/// <param name="Head">What it is for; it stands at the head of each of its pages.</param>
public sealed record NewPage(string Head) : Block;
