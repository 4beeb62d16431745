namespace CoatPlan.Jobs.Reading;

/// <summary>A list, or a single item of it.</summary>
internal sealed record OneOrListForm(Form Item, int Least = 0) : Form
{
    /// <inheritdoc/>
    public override string Example => Item.Example;
}
