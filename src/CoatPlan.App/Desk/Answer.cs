namespace CoatPlan.App.Desk;

/// <summary>An answer to a question.</summary>
/// <param name="Letter">The key that gives it at once.</param>
/// <param name="Says">The answer in words.</param>
/// <param name="Give">What follows from it.</param>
internal sealed record Answer(char Letter, string Says, Action Give);
