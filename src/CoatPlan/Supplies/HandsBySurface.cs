using CoatPlan.Paint;
using CoatPlan.Timetable;

namespace CoatPlan.Supplies;

/// <summary>Whose work each dated step is: that of its surfaces, or of the job as a whole.</summary>
public static class HandsBySurface
{
    /// <summary>Person time by surface, in the order of the steps, all people and stations.</summary>
    /// <param name="dated">The dated steps.</param>
    /// <param name="coats">Coats, for how a batch's time is shared among its surfaces.</param>
    public static ImmutableArray<SurfaceHours> Of(DatedJob dated, Coats coats)
    {
        ArgumentNullException.ThrowIfNull(dated);
        ArgumentNullException.ThrowIfNull(coats);
        return [.. dated.Steps.Where(step => !step.Surfaces.IsEmpty).SelectMany(step => Shared(step, coats))];
    }

    /// <summary>Person time of work that is no single surface's.</summary>
    /// <param name="dated">The dated steps.</param>
    public static Duration Common(DatedJob dated)
    {
        ArgumentNullException.ThrowIfNull(dated);
        return dated.Steps.Where(step => step.Surfaces.IsEmpty).Aggregate(Duration.Zero, (sum, step) => sum + PersonTime(step));
    }

    private static IEnumerable<SurfaceHours> Shared(DatedStep step, Coats coats)
    {
        var parts = Parts(step, coats);
        var whole = parts.Sum(part => part.Hands.TotalMinutes);
        var time = PersonTime(step);
        return parts.Select(part => new SurfaceHours(part.Surface, whole > 0 ? time * (part.Hands.TotalMinutes / whole) : time / parts.Length));
    }

    private static ImmutableArray<SurfaceHours> Parts(DatedStep step, Coats coats)
    {
        if (step.Operation is null)
            return [.. coats.Of(step.Surfaces, step.Layer!.Value, step.Coat!.Value).Select(coat => new SurfaceHours(coat.Surface, coat.Hands))];
        return step.Operation.Work.IsEmpty
            ? [.. step.Surfaces.Select(surface => new SurfaceHours(surface, Duration.Zero))]
            : [.. step.Operation.Work.Select(work => new SurfaceHours(work.Surface, work.Hands))];
    }

    private static Duration PersonTime(DatedStep step) => Duration.FromMinutes((long)step.HandsMinutes * step.People);
}
