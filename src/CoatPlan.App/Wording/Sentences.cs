using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Sheets.Content;

namespace CoatPlan.App.Wording;

/// <summary>What a plan says about a step, in words.</summary>
public static class Sentences
{
    /// <summary>The surfaces of a step by name, with their pieces: <c>Inner fender (2), Battery tray</c>; <c>the whole job</c> where it names none.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">A step of it.</param>
    public static string SurfacesOf(Plan plan, PlanStep step)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(step);

        if (step.Surfaces.IsEmpty)
            return "the whole job";

        return new PlanWords(plan).Names(step.Surfaces);
    }

    /// <summary>The waits of a step, a sentence each: when it may start at the earliest and at the latest, and why. A step that merely follows another has none.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">A step of it.</param>
    public static ImmutableArray<string> WaitsOf(Plan plan, PlanStep step)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(step);

        var said = ImmutableArray.CreateBuilder<string>();
        foreach (var wait in step.After)
        {
            if (plan.Steps.FirstOrDefault(other => other.Id == wait.Step) is not { } earlier)
                continue;

            if (wait.LeastMin is > 0)
                said.Add(NotBefore(earlier, wait, step.Start.Date));
            if (wait.MostMin is { } most)
                said.Add($"not after {Clock.MomentSeenFrom(Add(earlier.Start, most), step.Start.Date)}: {Written.Minutes(most)} from the start of {Quoted(earlier)}, then its window closes");
        }

        return said.ToImmutable();
    }

    /// <summary>The conditions at a step's start: air, metal, dew point, humidity.</summary>
    /// <param name="step">The step.</param>
    /// <param name="units">The job's units.</param>
    public static string AirOf(PlanStep step, PrintUnits units)
    {
        ArgumentNullException.ThrowIfNull(step);
        return $"air {Written.Temperature(step.AirC, units)}, metal {Written.Temperature(step.SurfaceC, units)}, "
            + $"dew point {Written.Temperature(step.DewPointC, units)}, humidity {Written.Percent(step.Humidity)}";
    }

    /// <summary>The label's limits in words, for comparing with what is read at the bench.</summary>
    /// <param name="limits">The limits.</param>
    /// <param name="units">The job's units.</param>
    public static string LimitsOf(PlanLimits limits, PrintUnits units)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var humidity = limits.HumidityLow > 0
            ? $"humidity {Written.Percent(limits.HumidityLow)} to {Written.Percent(limits.HumidityHigh)}"
            : $"humidity at most {Written.Percent(limits.HumidityHigh)}";
        return $"air {Range(limits.AirLowC, limits.AirHighC, units)}, metal {Range(limits.SurfaceLowC, limits.SurfaceHighC, units)}, {humidity}, "
            + $"metal at least {Written.TemperatureDifference(limits.AboveDewC, units)} above the dew point";
    }

    /// <summary>A stage as a state of the film: <c>touch-dry</c>.</summary>
    /// <param name="stage">The stage.</param>
    /// <exception cref="ArgumentOutOfRangeException">No stage of the contract.</exception>
    public static string StageOf(PlanStage stage) => stage switch
    {
        PlanStage.Done => "end",
        PlanStage.Dust => "dust-free state",
        PlanStage.Touch => "touch-dry state",
        PlanStage.Tape => "tape-dry state",
        PlanStage.Recoat => "recoat time",
        PlanStage.Handle => "handling strength",
        PlanStage.Through => "dry-through state",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "A stage of the contract."),
    };

    private static string NotBefore(PlanStep earlier, PlanWait wait, LocalDate known)
    {
        var least = wait.LeastMin!.Value;
        var label = wait.LabelMin is { } said && Math.Abs(said - least) >= 1 ? $"; label {Written.Minutes(said)}" : "";
        return $"not before {Clock.MomentSeenFrom(Add(earlier.End, least), known)}: {StageOf(wait.Stage)} of {Quoted(earlier)} ({Written.Minutes(least)}{label})";
    }

    private static string Range(double low, double high, PrintUnits units) =>
        $"{Written.Temperature(low, units)} to {Written.Temperature(high, units)}";

    private static string Quoted(PlanStep step) => $"“{step.Title}”";

    private static LocalDateTime Add(LocalDateTime from, double minutes) => from.PlusMinutes((long)Math.Ceiling(minutes));
}
