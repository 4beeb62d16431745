using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Climate;

/// <summary>From a label to the law by which its film dries.</summary>
internal static class LabelLaws
{
    /// <summary>Times shorter than this count as this in a table, minutes: its logarithm must exist.</summary>
    private const double Shortest = 1e-3;

    /// <summary>Humidity at which a label's times can hold at most: at saturation no water would leave.</summary>
    private const double DampestLabel = 0.99;

    /// <summary>Humidity at which a label's times can hold at least: in bone-dry air nothing would take up moisture.</summary>
    private const double DriestLabel = 0.01;

    /// <summary>The law of a stage, and how much of it the stage needs.</summary>
    public static (RateLaw Law, double Need) Stage(Label label, DryingStage stage) =>
        Thick(label, "times", Of(
            label, RateBound.Floor, Minutes(label.Times.At(stage)),
            label.TimesAt.Select(row => ((double, double)?)(row.Air.DegreesCelsius, Minutes(row.Times.At(stage))))));

    /// <summary>The law of any other wait that is told at the label's conditions; in a table it is scaled as the time to touch.</summary>
    public static (RateLaw Law, double Need) Wait(Label label, Duration wait) =>
        Thick(label, "times", Of(label, RateBound.Floor, Minutes(wait), label.TimesAt.Select(row => AsTouch(label, row, Minutes(wait), RateBound.Floor))));

    /// <summary>The law of a window's opening, and how much of it must have passed.</summary>
    public static (RateLaw Law, double Need) Opening(Label label, RecoatGap gap, int alternative)
    {
        var from = Minutes(Windows.Of(label, gap)[alternative].From);
        return Thick(label, gap == RecoatGap.Itself ? "recoat" : "topcoat", Of(
            label, RateBound.Floor, from, label.TimesAt.Select(row => RowEnd(label, gap, alternative, row, from, RateBound.Floor, window => window.From))));
    }

    /// <summary>The law of a window's closing, and how much of it may have passed.</summary>
    /// <param name="label">The label.</param>
    /// <param name="gap">Which of its windows.</param>
    /// <param name="alternative">Place in the list of windows; that window closes.</param>
    public static (RateLaw Law, double Allowance) Closing(Label label, RecoatGap gap, int alternative)
    {
        var to = Minutes(Windows.Of(label, gap)[alternative].To!.Value);
        return Of(label, RateBound.Ceiling, to, label.TimesAt.Select(row => RowEnd(label, gap, alternative, row, to, RateBound.Ceiling, window => window.To)));
    }

    // What the job says of its label itself holds for the job's film; only what its class says holds for the class's.
    private static (RateLaw Law, double Need) Thick(Label label, string field, (RateLaw Law, double Need) wait) =>
        IsOfTheJob(label, field) || IsOfTheJob(label, "times-at") ? wait : wait with { Need = wait.Need * label.ThickFilmFactor };

    private static bool IsOfTheJob(Label label, string field) => label.Origins.TryGetValue(field, out var origin) && origin == Origin.Job;

    private static (RateLaw Law, double Need) Of(Label label, RateBound bound, double minutes, IEnumerable<(double Celsius, double Minutes)?> rows)
    {
        var table = rows.ToArray();
        var law = new RateLaw
        {
            Kind = label.Drying switch
            {
                DryingKind.Waterborne => RateKind.WarmthAndDryness,
                DryingKind.Moisture => RateKind.WarmthAndDamp,
                _ => RateKind.Warmth,
            },
            Bound = bound,
            AtCelsius = label.AtAir.DegreesCelsius,
            AtRelative = Math.Clamp(label.AtHumidity.DecimalFractions, DriestLabel, DampestLabel),
            Q10 = label.Q10,
            LowestAirCelsius = label.Limits.AirLow.DegreesCelsius,
            LowestSurfaceCelsius = label.Limits.SurfaceLow.DegreesCelsius,
        };
        return minutes <= 0 || table.Length == 0 || Array.Exists(table, row => row is null)
            ? (law, minutes)
            : (law with
            {
                Table = new TimeTable(table.Select(row => (row!.Value.Celsius, Math.Max(Shortest, row.Value.Minutes)))),
                LabelMinutes = minutes,
            }, 1);
    }

    /// <summary>A row's own end of a window; where the row has no windows, the label's end, scaled as its time to touch.</summary>
    private static (double Celsius, double Minutes)? RowEnd(
        Label label, RecoatGap gap, int alternative, StageTimesAt row, double minutes, RateBound bound, Func<CoatWindow, Duration?> end)
    {
        if (gap == RecoatGap.Itself && !row.Recoat.IsDefaultOrEmpty)
        {
            return row.Recoat.Length == label.Recoat.Length && end(row.Recoat[alternative]) is { } own
                ? (row.Air.DegreesCelsius, Minutes(own))
                : null;
        }

        return AsTouch(label, row, minutes, bound);
    }

    // What a warm row does not say itself stays at the label's time: only the row's own figures may promise less.
    private static (double Celsius, double Minutes)? AsTouch(Label label, StageTimesAt row, double minutes, RateBound bound)
    {
        var touch = Minutes(label.Times.Touch);
        if (touch <= 0)
        {
            return null;
        }

        var scaled = minutes * Minutes(row.Times.Touch) / touch;
        return (row.Air.DegreesCelsius, bound == RateBound.Floor ? Math.Max(minutes, scaled) : scaled);
    }

    private static Duration At(this StageTimes times, DryingStage stage) => stage switch
    {
        DryingStage.Dust => times.Dust,
        DryingStage.Touch => times.Touch,
        DryingStage.Tape => times.Tape,
        DryingStage.Handle => times.Handle,
        DryingStage.Through => times.Through,
        DryingStage.Service => times.Service,
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "There is no such stage."),
    };

    private static double Minutes(Duration duration) => duration.TotalMinutes;
}
