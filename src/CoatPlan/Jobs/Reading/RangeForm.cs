using CoatPlan.Problems;
using CoatPlan.Quantities;

namespace CoatPlan.Jobs.Reading;

/// <summary>Two figures of one kind, <c>50-90 °F</c>.</summary>
internal sealed record RangeForm(Dimension Dimension, Bounds Bounds, string Sample, string Pattern = "") : Form
{
    /// <inheritdoc/>
    public override string Example => Sample;
}
