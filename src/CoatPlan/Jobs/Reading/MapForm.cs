namespace CoatPlan.Jobs.Reading;

/// <summary>A map with known keys.</summary>
internal sealed record MapForm(Func<KeyTable> Table) : Form;
