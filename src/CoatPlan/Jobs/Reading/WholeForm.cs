using CoatPlan.Problems;

namespace CoatPlan.Jobs.Reading;

/// <summary>A whole number.</summary>
internal sealed record WholeForm(Bounds Bounds) : Form
{
    /// <inheritdoc/>
    public override string Example => Bounds.Least.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
