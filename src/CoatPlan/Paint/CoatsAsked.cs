namespace CoatPlan.Paint;

/// <summary>How many coats a layer takes, and who asks for them.</summary>
/// <param name="Coats">Full coats, 1 or more.</param>
/// <param name="ByJob">What the system of the job asks; null where it leaves it to the label.</param>
/// <param name="LabelLeast">Fewest coats of the label, 1 or more.</param>
/// <param name="LabelMost">Most coats of the label, at least <paramref name="LabelLeast"/>.</param>
/// <param name="ForHiding">What hiding the old colour asks, within the label or not; null where it is not asked or not known.</param>
public sealed record CoatsAsked(int Coats, int? ByJob, int LabelLeast, int LabelMost, int? ForHiding)
{
    /// <summary>
    /// The largest of what the system, the label and hiding ask. The label's most bounds what hiding adds; what the system asks is never reduced.
    /// </summary>
    /// <param name="byJob">What the system asks, 1 or more; null: the label's least.</param>
    /// <param name="labelLeast">1 or more.</param>
    /// <param name="labelMost">At least <paramref name="labelLeast"/>.</param>
    /// <param name="forHiding">1 or more; null where nothing must be hidden.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public static CoatsAsked Of(int? byJob, int labelLeast, int labelMost, int? forHiding)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(labelLeast, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(labelMost, labelLeast);
        if (byJob is { } asked)
            ArgumentOutOfRangeException.ThrowIfLessThan(asked, 1, nameof(byJob));

        var hiding = Math.Min(forHiding ?? 1, labelMost);
        var coats = Math.Max(Math.Max(byJob ?? labelLeast, labelLeast), hiding);
        return new CoatsAsked(coats, byJob, labelLeast, labelMost, forHiding);
    }

    /// <summary>Whether the system asks more than the label allows.</summary>
    public bool IsPastLabel => Coats > LabelMost;

    /// <summary>Whether the system alone would leave fewer coats than the label or hiding wants.</summary>
    public bool SystemAsksTooFew => ByJob is { } asked && asked < Math.Max(LabelLeast, ForHiding ?? 1);

    /// <summary>Whether the old colour shows through even at <see cref="Coats"/>.</summary>
    public bool DoesNotHide => ForHiding > Coats;
}
