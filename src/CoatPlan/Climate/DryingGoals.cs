using CoatPlan.Presets;

namespace CoatPlan.Climate;

/// <summary>One wait of a label on pieces that are worked on together, its law looked up once for the thousands of times that a schedule asks.</summary>
internal sealed class DryingGoals
{
    private readonly (DryingCurve Curve, double Need)[] goals;

    private DryingGoals(IEnumerable<SurfaceCurve> metals, (RateLaw Law, double Need) wait) =>
        goals = [.. metals.Select(metal => (metal.Drying(wait.Law), wait.Need))];

    /// <summary>A stage of a film; see <see cref="Drying.Reaches"/>.</summary>
    public static DryingGoals Stage(IEnumerable<SurfaceCurve> metals, Label label, DryingStage stage) => new(metals, LabelLaws.Stage(label, stage));

    /// <summary>A wait at the label's conditions; see <see cref="Drying.Outwaits"/>.</summary>
    public static DryingGoals Wait(IEnumerable<SurfaceCurve> metals, Label label, Duration wait) => new(metals, LabelLaws.Wait(label, wait));

    /// <summary>A window's opening; see <see cref="Windows.Opens"/>.</summary>
    public static DryingGoals Opening(IEnumerable<SurfaceCurve> metals, Label label, RecoatGap gap, int window) =>
        new(metals, LabelLaws.Opening(label, gap, window));

    /// <summary>The closing of a window that closes; see <see cref="Windows.Closes"/>.</summary>
    public static DryingGoals Closing(IEnumerable<SurfaceCurve> metals, Label label, RecoatGap gap, int window) =>
        new(metals, LabelLaws.Closing(label, gap, window));

    /// <summary>When the last of the pieces is there; null where one never is.</summary>
    /// <param name="from">Minutes from the job's start.</param>
    /// <param name="filmFactor">How much longer the film takes than the label's, 1 or more.</param>
    public int? Last(int from, double filmFactor)
    {
        var last = int.MinValue;
        foreach (var (curve, need) in goals)
        {
            if (curve.Reaches(from, need * filmFactor) is not { } reached)
                return null;
            last = Math.Max(last, reached);
        }

        return last;
    }

    /// <summary>Until when the first of the pieces has done no more than that; null where that holds for ever.</summary>
    /// <param name="from">Minutes from the job's start.</param>
    public int? First(int from)
    {
        int? first = null;
        foreach (var (curve, need) in goals)
        {
            if (curve.Outlasts(from, need) is { } outlasted)
                first = first is { } known ? Math.Min(known, outlasted) : outlasted;
        }

        return first;
    }
}
