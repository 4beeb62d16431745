namespace CoatPlan.Jobs.Reading;

/// <summary>A form of its own: what is due in words, an example, and a pattern that the schema checks.</summary>
internal sealed record WrittenForm(string Due, string Sample, string Pattern) : Form
{
    /// <inheritdoc/>
    public override string Example => Sample;
}
