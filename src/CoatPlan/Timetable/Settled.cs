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

    /// <summary>End of the last step; null where the whole of the job could not be placed.</summary>
    public LocalDateTime? Finish
    {
        get
        {
            var last = Arranged.Drawn.Nodes.Select((node, index) => node.IsMilestone ? null : Arranged.Outcome.Placed[index]?.End).Max();
            return Arranged.Stopped is null && last is { } minute ? Place.Clock.At(minute) : null;
        }
    }
}
