using CoatPlan.Paint;
using CoatPlan.Plans;
using CoatPlan.Presets;
using CoatPlan.Timetable;

namespace CoatPlan.Composition;

/// <summary>Dated steps as the plan shows them.</summary>
internal static class PlanSteps
{
    public static ImmutableArray<PlanStep> Of(DatedJob dated, Figures figures) => [.. dated.Steps.Select(step => Of(step, figures))];

    private static PlanStep Of(DatedStep step, Figures figures) => new()
    {
        Id = step.Id,
        Kind = step.Word,
        Title = step.Title,
        Surfaces = step.Surfaces,
        Batch = step.Batch,
        Station = step.Station,
        Product = step.Label?.Key,
        Layer = step.Layer,
        Coat = step.Coat,
        Of = step.Of,
        Mist = step.Mist,
        Start = step.Start,
        End = step.End,
        HandsMin = step.HandsMinutes,
        People = step.People,
        MakesDust = step.MakesDust,
        Spray = step.Sprays,
        After = [.. step.Waits.Select(wait => new PlanWait(wait.Step, Stage(wait.Stage), wait.LabelMinutes, wait.LeastMinutes, wait.MostMinutes))],
        AirC = step.Conditions.Air.DegreesCelsius,
        SurfaceC = step.Conditions.Surface.DegreesCelsius,
        DewPointC = step.Conditions.DewPoint.DegreesCelsius,
        Humidity = step.Conditions.Humidity.DecimalFractions,
        LastSafeStart = step.LastSafeStart,
        AfterLastSafeStart = step.AfterLastSafeStart,
        Why = step.Why,
        Notes = step.Operation?.Notes ?? [],
        WaitsFor = step.WaitsFor,
        SlackMin = step.SlackMinutes,
        Ml = step.Volume?.Milliliters,
        Passes = step.Label is { } sprayed && SprayPasses.Of(sprayed.Method, figures) is { } passes
            ? new PlanPasses(passes.FanWidth.Meters, passes.Spacing.Meters, passes.Distance.Meters)
            : null,
        Limits = step.Label is { } label ? Of(label.Limits) : null,
        Done = step.Done,
    };

    private static PlanLimits Of(CoatingLimits limits) => new(
        limits.AirLow.DegreesCelsius,
        limits.AirHigh.DegreesCelsius,
        limits.SurfaceLow.DegreesCelsius,
        limits.SurfaceHigh.DegreesCelsius,
        limits.HumidityLow.DecimalFractions,
        limits.HumidityHigh.DecimalFractions,
        limits.AboveDew.DegreesCelsius);

    private static PlanStage Stage(FilmStage stage) => stage switch
    {
        FilmStage.Done => PlanStage.Done,
        FilmStage.Dust => PlanStage.Dust,
        FilmStage.Touch => PlanStage.Touch,
        FilmStage.Tape => PlanStage.Tape,
        FilmStage.Recoat => PlanStage.Recoat,
        FilmStage.Handle => PlanStage.Handle,
        FilmStage.Through => PlanStage.Through,
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "A stage of a film."),
    };
}
