namespace CoatPlan.Jobs.Reading;

/// <summary>A sum of money without its currency.</summary>
internal sealed record MoneyForm : Form
{
    /// <inheritdoc/>
    public override string Example => "9.50";
}
