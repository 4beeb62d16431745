namespace CoatPlan.Jobs.Reading;

/// <summary>Any text.</summary>
internal sealed record TextForm(string Sample = "text") : Form
{
    /// <inheritdoc/>
    public override string Example => Sample;
}
