using CoatPlan.Jobs;
using CoatPlan.Prep;
using CoatPlan.Quantities;
using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>What every network of one job is drawn from.</summary>
internal sealed record Workplace
{
    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>Minutes and wall times.</summary>
    public required Clock Clock { get; init; }

    /// <summary>When hands-on work goes on.</summary>
    public required OpenHours Hours { get; init; }

    /// <summary>What is done around the coats.</summary>
    public required Sequence Sequence { get; init; }

    /// <summary>The air around any set of surfaces.</summary>
    public required AirAround AirAround { get; init; }

    /// <summary>Minutes from dry to touch until vapour is purged, so that a flame may burn again.</summary>
    public required int ClearingMinutes { get; init; }

    /// <summary>Longest time from the wipe to the coat that follows it.</summary>
    public required int WipeHoldsMinutes { get; init; }

    /// <summary>Least time from the last coat until the tape is pulled, at the conditions of its label.</summary>
    public required int LeastBeforeUnmaskMinutes { get; init; }

    /// <summary>What has been done already.</summary>
    public required FactsDone Done { get; init; }

    /// <summary>Longest time that tape stays on, minutes.</summary>
    public int TapeLimitMinutes => (int)Math.Floor(Job.TapeLimit.TotalMinutes);

    /// <summary>The stations of a class, or one that has no number.</summary>
    public IEnumerable<int?> Stations =>
        Job.Crew.Stations == 1 ? [null] : Enumerable.Range(1, Job.Crew.Stations).Select(station => (int?)station);

    /// <summary>How quantities are written in reasons.</summary>
    public QuantityFormat Format => Job.UnitFormat;

    /// <summary>The longest opening, minutes; 0 where there is none.</summary>
    public int LongestOpening { get; init; }
}
