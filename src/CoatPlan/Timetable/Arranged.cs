using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>Batches with their network and what the scheduling room made of it.</summary>
/// <param name="Batches">The batches.</param>
/// <param name="Drawn">The network that was settled on: the whole job, or the part of it that could be placed.</param>
/// <param name="Outcome">What became of that network.</param>
/// <param name="Stopped">Where the whole job came to a stop; null where it was placed.</param>
internal sealed record Arranged(ImmutableArray<Batch> Batches, WorkNetwork Drawn, Outcome Outcome, Stop? Stopped)
{
    /// <summary>The network of the whole job with every way open to pass each gap, of which <see cref="Drawn"/> is the one that was settled on; null where the job was not placed.</summary>
    public WorkNetwork? Open { get; init; }

    /// <summary>Batches whose network was scheduled, with what the schedule settled on.</summary>
    /// <param name="batches">The batches.</param>
    /// <param name="drawn">Their network, every way open.</param>
    /// <param name="outcome">What became of it, a schedule.</param>
    /// <param name="stopped">Where the whole job came to a stop, of which this is a part; null where this is the whole.</param>
    public static Arranged On(ImmutableArray<Batch> batches, WorkNetwork drawn, Outcome outcome, Stop? stopped)
    {
        var (settled, schedule) = drawn.SettledOn(outcome.Schedule!);
        return new Arranged(batches, settled, outcome with { Schedule = schedule, Placed = [.. schedule.Placements.Select(at => (Placement?)at)] }, stopped);
    }

    /// <summary>The schedule of the open network.</summary>
    public Schedule? OpenSchedule { get; init; }
}
