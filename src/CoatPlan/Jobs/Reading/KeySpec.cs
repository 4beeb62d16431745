namespace CoatPlan.Jobs.Reading;

/// <summary>A key of a map: its form, whether it must be there, and what it says.</summary>
internal sealed record KeySpec(string Name, Form Form, string Says, bool IsRequired = false);
