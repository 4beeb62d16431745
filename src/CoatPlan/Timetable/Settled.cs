using CoatPlan.Climate;

namespace CoatPlan.Timetable;

/// <summary>A job that was arranged, before it is put into dates.</summary>
/// <param name="Arranged">Its network with what the scheduling room made of it.</param>
/// <param name="Place">What the network was drawn from.</param>
/// <param name="HeaterOffs">When an open heater is off; empty where there is none.</param>
internal sealed record Settled(Arranged Arranged, Workplace Place, ImmutableArray<HeaterOff> HeaterOffs)
{
    /// <summary>A minute before which no plan of the job finishes, worked out when it is asked for.</summary>
    public required Func<int> Bound { get; init; }
}
