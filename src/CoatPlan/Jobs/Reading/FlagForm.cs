namespace CoatPlan.Jobs.Reading;

/// <summary><c>true</c> or <c>false</c>.</summary>
internal sealed record FlagForm : Form
{
    /// <inheritdoc/>
    public override string Example => "true";
}
