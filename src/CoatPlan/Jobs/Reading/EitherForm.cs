namespace CoatPlan.Jobs.Reading;

/// <summary>One form or the other.</summary>
internal sealed record EitherForm(Form First, Form Second) : Form
{
    /// <inheritdoc/>
    public override string Example => First.Example;
}
