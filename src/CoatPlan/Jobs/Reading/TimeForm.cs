namespace CoatPlan.Jobs.Reading;

/// <summary>A local date and time.</summary>
internal sealed record TimeForm : Form
{
    /// <inheritdoc/>
    public override string Example => "2027-05-14 16:00";
}
