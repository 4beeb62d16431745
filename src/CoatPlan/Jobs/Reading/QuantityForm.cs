using CoatPlan.Problems;
using CoatPlan.Quantities;

namespace CoatPlan.Jobs.Reading;

/// <summary>A number with a unit.</summary>
internal sealed record QuantityForm(Dimension Dimension, Bounds Bounds) : Form
{
    /// <inheritdoc/>
    public override string Example => Sentences.Example(Dimension);
}
