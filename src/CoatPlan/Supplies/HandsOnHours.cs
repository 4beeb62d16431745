using CoatPlan.Paint;
using CoatPlan.Timetable;

namespace CoatPlan.Supplies;

/// <summary>Whose work each dated step is: that of its surfaces, or of the job as a whole.</summary>
public static class HandsOnHours
{
    /// <summary>Person time in the order of the steps, all people and stations.</summary>
    /// <param name="dated">The dated steps.</param>
    /// <param name="coats">Coats, for how a batch's time is shared among its surfaces.</param>
    public static ImmutableArray<WorkHours> Of(DatedJob dated, Coats coats)
    {
        ArgumentNullException.ThrowIfNull(dated);
        ArgumentNullException.ThrowIfNull(coats);
        return
        [
            .. dated.Steps.SelectMany(step => step.Surfaces.IsEmpty ? [new WorkHours(null, step.Word, PersonTime(step))] : Shared(step, coats)),
        ];
    }

    private static IEnumerable<WorkHours> Shared(DatedStep step, Coats coats)
    {
        var parts = Parts(step, coats);
        var whole = parts.Sum(part => part.Hands.TotalMinutes);
        var time = PersonTime(step);
        return parts.Select(part => part with { Hands = whole > 0 ? time * (part.Hands.TotalMinutes / whole) : time / parts.Length });
    }

    private static ImmutableArray<WorkHours> Parts(DatedStep step, Coats coats)
    {
        if (step.Operation is null)
            return [.. coats.Of(step.Surfaces, step.Layer!.Value, step.Coat!.Value).Select(coat => new WorkHours(coat.Surface, step.Word, coat.Hands))];
        return step.Operation.Work.IsEmpty
            ? [.. step.Surfaces.Select(surface => new WorkHours(surface, step.Word, Duration.Zero))]
            : [.. step.Operation.Work.Select(work => new WorkHours(work.Surface, step.Word, work.Hands))];
    }

    private static Duration PersonTime(DatedStep step) => Duration.FromMinutes((long)step.HandsMinutes * step.People);
}
