using CoatPlan.Presets;

namespace CoatPlan.Climate;

/// <summary>When the next coat may go on.</summary>
public static class Windows
{
    /// <summary>Every window of a label in the job's own air, in the label's order.</summary>
    /// <remarks>
    /// A window opens by the last piece of the coat before, which dried least, and closes by its first, which dried most. On a cold night "from
    /// 10 minutes to 1 hour" may open after 65 minutes and so never be; "after 24 hours" is what is left.
    /// </remarks>
    /// <param name="label">What the coat before was sprayed with.</param>
    /// <param name="gap">What goes over it.</param>
    /// <param name="metal">The piece.</param>
    /// <param name="start">Start of the coat before, minutes from the job's start.</param>
    /// <param name="end">Its end, not before its start.</param>
    /// <exception cref="ArgumentOutOfRangeException">The coat ends before it starts.</exception>
    public static ImmutableArray<RecoatOpening> For(Label label, RecoatGap gap, SurfaceCurve metal, int start, int end)
    {
        ArgumentNullException.ThrowIfNull(label);
        if (end < start)
        {
            throw new ArgumentOutOfRangeException(nameof(end), end, FormattableString.Invariant($"A coat that starts at minute {start} cannot end before."));
        }

        var windows = Of(label, gap);
        return [.. windows.Select((window, i) => new RecoatOpening(
            i, window.From.TotalMinutes, Opens(label, gap, i, metal, end), Closes(label, gap, i, metal, start)))];
    }

    /// <summary>The first start that one window permits; never falling as the end grows.</summary>
    /// <param name="label">What the coat before was sprayed with.</param>
    /// <param name="gap">What goes over it.</param>
    /// <param name="alternative">Place in the label's list of windows, from 0.</param>
    /// <param name="metal">The piece.</param>
    /// <param name="end">End of the coat before, minutes from the job's start.</param>
    /// <param name="filmFactor">How much longer its film takes than the label's, 1 or more: <see cref="Drying.ThickFilmFactor"/>.</param>
    /// <returns>Minutes from the job's start, rounded up; null: it does not open within 400 days of the start.</returns>
    public static int? Opens(Label label, RecoatGap gap, int alternative, SurfaceCurve metal, int end, double filmFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(metal);
        _ = WindowAt(label, gap, alternative);
        var (law, need) = LabelLaws.Opening(label, gap, alternative);
        return metal.Drying(law).Reaches(end, need * filmFactor);
    }

    /// <summary>The last start that one window permits; never falling as the start grows.</summary>
    /// <param name="label">What the coat before was sprayed with.</param>
    /// <param name="gap">What goes over it.</param>
    /// <param name="alternative">Place in the label's list of windows, from 0.</param>
    /// <param name="metal">The piece.</param>
    /// <param name="start">Start of the coat before, minutes from the job's start.</param>
    /// <returns>Minutes from the job's start, rounded down; null: the window never closes.</returns>
    public static int? Closes(Label label, RecoatGap gap, int alternative, SurfaceCurve metal, int start)
    {
        ArgumentNullException.ThrowIfNull(metal);
        if (WindowAt(label, gap, alternative).To is null)
        {
            return null;
        }

        var (law, allowance) = LabelLaws.Closing(label, gap, alternative);
        return metal.Drying(law).Outlasts(start, allowance);
    }

    /// <summary>The windows of a label for what goes over it.</summary>
    /// <param name="label">What the coat before was sprayed with.</param>
    /// <param name="gap">What goes over it.</param>
    public static ImmutableArray<CoatWindow> Of(Label label, RecoatGap gap)
    {
        ArgumentNullException.ThrowIfNull(label);
        return gap == RecoatGap.Itself ? label.Recoat : label.Topcoat;
    }

    private static CoatWindow WindowAt(Label label, RecoatGap gap, int alternative)
    {
        var windows = Of(label, gap);
        return alternative >= 0 && alternative < windows.Length
            ? windows[alternative]
            : throw new ArgumentOutOfRangeException(nameof(alternative), alternative, FormattableString.Invariant($"The label has {windows.Length} windows, counted from 0."));
    }
}
