using CoatPlan.Problems;

namespace CoatPlan.Jobs.Reading;

/// <summary>A number without a unit.</summary>
internal sealed record NumberForm(Bounds Bounds) : Form
{
    /// <inheritdoc/>
    public override string Example => Sentences.Example(Quantities.Dimension.None);
}
