using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan.App.Desk;

/// <summary>Ticks steps off as done, as entries of the job's own text, so that the rest of the plan moves.</summary>
internal static class StepTicks
{
    /// <summary>A time as a person types it: the time alone means the day of the step.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="day">The day of the step.</param>
    /// <returns>The time; null where it is none.</returns>
    public static LocalDateTime? TimeOf(string typed, LocalDate day) => DoneSteps.TimeOf(typed, day);

    /// <summary>Puts a step among what is done, and moves the moment from which the rest is planned.</summary>
    /// <param name="document">The job's file.</param>
    /// <param name="job">The job.</param>
    /// <param name="step">The step.</param>
    /// <param name="report">When it ended, what it took and used.</param>
    /// <param name="readings">Air, metal and humidity as they were read before it, with commas between; null for none.</param>
    public static JobEditing Tick(JobDocument document, Job job, PlanStep step, StepReport report, string? readings)
    {
        var recorded = DoneSteps.Record(document, job, step, report with { AsOf = job.AsOf >= report.Ended ? null : report.Ended });
        return recorded.Document is { } with && readings?.Split(',', StringSplitOptions.TrimEntries) is [var air, var metal, var humidity]
            ? JobEdit.Set(with, JobPath.Root.Key("done").At(job.Done.Length).Key("readings"), JobValue.MapOf(("air", air), ("metal", metal), ("humidity", humidity)))
            : recorded;
    }
}
