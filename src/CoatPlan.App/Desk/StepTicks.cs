using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Plans;
using NodaTime.Text;

namespace CoatPlan.App.Desk;

/// <summary>Ticks steps off as done, as entries of the job's own text, so that the rest of the plan moves.</summary>
internal static class StepTicks
{
    private static readonly LocalDateTimePattern Written = LocalDateTimePattern.Create("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static readonly LocalTimePattern TimeOnly = LocalTimePattern.Create("H:mm", CultureInfo.InvariantCulture);

    /// <summary>A time as a person types it: the time alone means the day of the step.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="day">The day of the step.</param>
    /// <returns>The time; null where it is none.</returns>
    public static LocalDateTime? TimeOf(string typed, LocalDate day)
    {
        if (TimeOnly.Parse(typed.Trim()) is { Success: true } time)
            return day.At(time.Value);
        return Written.Parse(typed.Trim()) is { Success: true } both ? both.Value : null;
    }

    /// <summary>Puts a step among what is done, and moves the moment from which the rest is planned.</summary>
    /// <param name="text">The job's text.</param>
    /// <param name="job">The job.</param>
    /// <param name="step">The step.</param>
    /// <param name="ended">When it ended.</param>
    /// <param name="cans">Cans it used, as a person types it; empty for as planned.</param>
    /// <param name="note">A note; empty for none.</param>
    public static JobEditing Tick(string text, Job job, PlanStep step, LocalDateTime ended, string cans, string note)
    {
        var entry = Entry(step, ended, cans, note);
        var list = JobPath.Root.Key("done");
        var ticked = job.Done.IsEmpty
            ? JobEdit.Set(text, list, new ListValue([entry]))
            : JobEdit.Insert(text, list, job.Done.Length, entry);
        return ticked.Text is { } with && !(job.AsOf >= ended)
            ? JobEdit.Set(with, JobPath.Root.Key("as-of"), JobValue.Of(Written.Format(ended)))
            : ticked;
    }

    private static MapValue Entry(PlanStep step, LocalDateTime ended, string cans, string note)
    {
        var entries = ImmutableArray.CreateBuilder<KeyValuePair<string, JobValue>>();
        if (!step.Surfaces.IsEmpty)
            entries.Add(KeyValuePair.Create("surfaces", JobValue.ListOf(step.Surfaces.AsSpan())));
        if (step is { Layer: { } layer, Coat: { } coat })
        {
            entries.Add(KeyValuePair.Create("layer", JobValue.Of(layer.ToString(CultureInfo.InvariantCulture))));
            entries.Add(KeyValuePair.Create("coat", JobValue.Of(coat.ToString(CultureInfo.InvariantCulture))));
        }
        else
        {
            entries.Add(KeyValuePair.Create("operation", JobValue.Of(step.Kind)));
        }

        entries.Add(KeyValuePair.Create("at", JobValue.Of(Written.Format(ended))));
        if (cans.Trim().Length > 0)
            entries.Add(KeyValuePair.Create("cans", JobValue.Of(cans.Trim())));
        if (note.Trim().Length > 0)
            entries.Add(KeyValuePair.Create("note", JobValue.Of(note.Trim())));
        return new MapValue(entries.ToImmutable());
    }
}
