using CoatPlan.Paint;
using CoatPlan.Prep;
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

    private static ImmutableArray<WorkHours> Shared(DatedStep step, Coats coats)
    {
        var parts = Parts(step, coats);
        var whole = 0.0;
        foreach (var part in parts)
            whole += part.Hands.TotalMinutes;

        var time = PersonTime(step);
        var shared = ImmutableArray.CreateBuilder<WorkHours>(parts.Length);
        foreach (var (surface, hands) in parts)
            shared.Add(new WorkHours(surface, step.Word, whole > 0 ? time * (hands.TotalMinutes / whole) : time / parts.Length));
        return shared.MoveToImmutable();
    }

    private static ImmutableArray<SurfaceWork> Parts(DatedStep step, Coats coats)
    {
        if (step.Operation is null)
            return [.. coats.Of(step.Surfaces, step.Layer!.Value, step.Coat!.Value).Select(coat => new SurfaceWork(coat.Surface, coat.Hands))];
        return step.Operation.Work.IsEmpty
            ? [.. step.Surfaces.Select(surface => new SurfaceWork(surface, Duration.Zero))]
            : step.Operation.Work;
    }

    private static Duration PersonTime(DatedStep step) => Duration.FromMinutes((long)step.HandsMinutes * step.People);
}
