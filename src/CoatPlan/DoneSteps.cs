using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Problems;
using NodaTime.Text;

namespace CoatPlan;

/// <summary>Steps of a plan as facts in the text of its job, so that the rest of the plan moves.</summary>
public static class DoneSteps
{
    private const int MostNear = 3;

    private static readonly LocalDateTimePattern Written = LocalDateTimePattern.Create("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static readonly LocalTimePattern TimeOnly = LocalTimePattern.Create("H:mm", CultureInfo.InvariantCulture);

    /// <summary>A time as a person types it: the time alone means a day that is known.</summary>
    /// <param name="typed">What was typed, such as <c>14:20</c> or <c>2027-05-15 14:20</c>.</param>
    /// <param name="day">The day that a time alone means.</param>
    /// <returns>The time; null where it is none.</returns>
    public static LocalDateTime? TimeOf(string typed, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var text = typed.Trim().Replace('T', ' ');
        if (TimeOnly.Parse(text) is { Success: true } time)
            return day.At(time.Value);
        return Written.Parse(text) is { Success: true } both ? both.Value : null;
    }

    /// <summary>The ids of a plan's steps that are nearest to one that it does not have, nearest first; none where none is near.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="id">What was asked for.</param>
    public static ImmutableArray<string> Near(Plan plan, string id)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(id);
        ImmutableArray<string> holding =
        [
            .. plan.Steps.Where(step => !step.Done && id.Length > 0 && step.Id.Contains(id, StringComparison.OrdinalIgnoreCase)).Select(step => step.Id).Take(MostNear),
        ];
        if (!holding.IsEmpty)
            return holding;

        var near = ImmutableArray.CreateBuilder<string>();
        var left = plan.Steps.Select(step => step.Id).ToList();
        while (near.Count < MostNear && Nearest.To(id, left) is { } found)
        {
            near.Add(found);
            left.Remove(found);
        }

        return near.ToImmutable();
    }

    /// <summary>Puts a step among what is done, as one entry of the job's <c>done</c>; every other byte stays.</summary>
    /// <param name="document">The job's file.</param>
    /// <param name="job">The job that was read from it.</param>
    /// <param name="step">A step of its plan.</param>
    /// <param name="report">When it ended, what it took and used.</param>
    public static JobEditing Record(JobDocument document, Job job, PlanStep step, StepReport report)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(report);

        var list = JobPath.Root.Key("done");
        var recorded = job.Done.IsEmpty
            ? JobEdit.Set(document, list, new ListValue([Entry(step, report)]))
            : JobEdit.Insert(document, list, job.Done.Length, Entry(step, report));
        return recorded.Document is { } with && report.AsOf is { } now
            ? JobEdit.Set(with, JobPath.Root.Key("as-of"), JobValue.Of(Written.Format(now)))
            : recorded;
    }

    private static MapValue Entry(PlanStep step, StepReport report)
    {
        var entries = ImmutableArray.CreateBuilder<KeyValuePair<string, JobValue>>();
        if (!step.Surfaces.IsEmpty)
            entries.Add(KeyValuePair.Create("surfaces", JobValue.ListOf(step.Surfaces.AsSpan())));
        if (step is { Layer: { } layer, Coat: { } coat })
        {
            Add("layer", layer.ToString(CultureInfo.InvariantCulture));
            Add("coat", coat.ToString(CultureInfo.InvariantCulture));
        }
        else
        {
            Add("operation", step.Kind);
        }

        Add("at", Written.Format(report.Ended));
        Add("took", report.Took);
        Add("cans", report.Cans);
        Add("note", report.Note);
        return new MapValue(entries.ToImmutable());

        void Add(string key, string? value)
        {
            if (value?.Trim() is { Length: > 0 } said)
                entries.Add(KeyValuePair.Create(key, JobValue.Of(said)));
        }
    }
}
