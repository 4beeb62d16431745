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
    /// <param name="text">The job's text.</param>
    /// <param name="job">The job.</param>
    /// <param name="step">The step.</param>
    /// <param name="ended">When it ended.</param>
    /// <param name="cans">Cans it used, as a person types it; empty for as planned.</param>
    /// <param name="note">A note; empty for none.</param>
    public static JobEditing Tick(string text, Job job, PlanStep step, LocalDateTime ended, string cans, string note) =>
        DoneSteps.Record(text, job, step, new StepReport { Ended = ended, Cans = cans, Note = note, AsOf = job.AsOf >= ended ? null : ended });
}
