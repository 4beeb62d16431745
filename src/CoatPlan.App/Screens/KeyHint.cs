namespace CoatPlan.App.Screens;

/// <summary>A key on the bottom line.</summary>
/// <param name="Name">What the key is called.</param>
/// <param name="Brief">What it does, in a word or two.</param>
internal sealed record KeyHint(string Name, string Brief);
