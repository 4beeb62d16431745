namespace CoatPlan.Jobs.Reading;

/// <summary>A key of a map: its form, whether it must be there, and what it says.</summary>
internal sealed record KeySpec(string Name, Form Form, string Says, bool IsRequired = false)
{
    /// <summary>What holds where the key is not there, in words; empty: what the label's preset says, or nothing.</summary>
    public string Unless { get; init; } = "";
}
