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

    /// <summary>A step by its station, where there are some, its title and its surfaces; these are left out where the title names them itself.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">A step of it.</param>
    public static string Named(Plan plan, PlanStep step)
    {
        var station = step.Station is { } number ? $"Station {number}: " : "";
        return station + Titled(plan, step);
    }

    /// <summary>A step by its title and its surfaces, as where its station goes without saying.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">A step of it.</param>
    public static string Titled(Plan plan, PlanStep step)
    {
        var named = plan.Surfaces.Where(surface => step.Surfaces.Contains(surface.Id)).All(surface => step.Title.Contains(surface.Name, StringComparison.Ordinal));
        return named ? step.Title : $"{step.Title}: {SurfacesOf(plan, step)}";
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

    /// <summary>What a coat meets after its last safe start, to follow on that moment; empty where there is nothing to say.</summary>
    /// <param name="step">The step.</param>
    public static string Then(PlanStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.AfterLastSafeStart is { Length: > 0 } then ? $", later: {then}" : "";
    }

    /// <summary>How much later a step could start, in words.</summary>
    /// <param name="step">The step.</param>
    public static string SlackOf(PlanStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.SlackMin == 0 ? "none, later here is later at the end" : $"{Written.Minutes(step.SlackMin)} before the finish moves";
    }

    /// <summary>An idle stretch with its reason: <c>Sat 15 May 15:28-15:58: not before …</c>.</summary>
    /// <param name="idle">The stretch.</param>
    public static string IdleOf(PlanIdle idle)
    {
        ArgumentNullException.ThrowIfNull(idle);
        var station = idle.Station is { } number ? $" station {number}," : "";
        var people = idle.People > 1 || idle.Station is not null ? $"{station} {Written.Count(idle.People, "person", "people")}" : "";
        return $"{Clock.Moment(idle.From)}-{Clock.Time(idle.To)}{people}: {idle.Why}";
    }

    /// <summary>A way out with the finish it gives.</summary>
    /// <param name="way">The way out.</param>
    public static string WayOut(PlanWayOut way)
    {
        ArgumentNullException.ThrowIfNull(way);
        return $"{way.What} Finish then: {Clock.Moment(way.Finish)}.";
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
