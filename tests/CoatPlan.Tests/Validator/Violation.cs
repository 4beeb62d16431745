namespace CoatPlan.Tests.Validator;

/// <summary>A rule of the contract that a plan breaks: its name, the step or field it breaks it at, and how.</summary>
public sealed record Violation(string Rule, string Where, string Text)
{
    public override string ToString() => $"{Rule} at {Where}: {Text}";
}
