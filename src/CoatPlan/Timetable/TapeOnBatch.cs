using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>The tape on a batch from its mask to its unmasking, off and on again in between where the schedule takes it off.</summary>
internal sealed class TapeOnBatch
{
    private readonly List<WorkNode> putOn = [];
    private readonly Workplace place;
    private readonly int leastToComeOff;

    /// <summary>Tape that a mask puts on; none where no mask is drawn.</summary>
    /// <param name="mask">The mask, null for none.</param>
    /// <param name="unmaskMinutes">Hands-on time to take it off.</param>
    /// <param name="place">What the network is drawn from.</param>
    public TapeOnBatch(WorkNode? mask, int unmaskMinutes, Workplace place)
    {
        this.place = place;
        leastToComeOff = place.LeastBeforeUnmaskMinutes + unmaskMinutes;
        if (mask is not null)
            putOn.Add(mask);
    }

    /// <summary>Whether there is tape at all.</summary>
    public bool IsOn => putOn.Count > 0;

    /// <summary>Tape may go on again, where it came off.</summary>
    public void GoesOnAgain(WorkNode remask) => putOn.Add(remask);

    /// <summary>The first minute at which tape may come off a coat that is on; 0 where it is not on yet.</summary>
    /// <param name="coat">The coat.</param>
    /// <param name="air">The air around it.</param>
    /// <param name="place">What the network is drawn from.</param>
    public static int MayComeOff(WorkNode coat, SurfaceAir air, Workplace place) =>
        coat.Activity.Fixed is { } on ? air.ReachingAfter(coat.Coat!, FilmStage.Touch, place.LeastBeforeUnmaskMinutes)(on.End) : 0;

    /// <summary>Tape comes off in time, counted from the last time that it went on; as soon as it can where it is on already and that is too late.</summary>
    /// <param name="sketch">The network so far.</param>
    /// <param name="unmask">The unmasking.</param>
    /// <param name="notBefore">The first minute at which the film lets it.</param>
    public void LimitTo(NetworkSketch sketch, WorkNode unmask, int notBefore)
    {
        for (var i = 0; i < putOn.Count; i++)
        {
            if (IsOverdue(putOn[i], unmask, notBefore))
                sketch.After(putOn[i], unmask);
            else
                Limit(sketch, i, unmask, unmask.Activity.Work);
        }
    }

    /// <summary>After a coat the tape can still come off in time: what follows from the limit before the unmasking itself is placed.</summary>
    public void LimitBefore(NetworkSketch sketch, WorkNode coat)
    {
        for (var i = 0; i < putOn.Count; i++)
            Limit(sketch, i, coat, coat.Activity.Work + leastToComeOff);
    }

    // No plan can mend what is past: then its limit says no more than that the tape comes off.
    private bool IsOverdue(WorkNode tape, WorkNode unmask, int notBefore) =>
        tape.Activity.Fixed is { } on && unmask.Activity.Fixed is null
        && Activities.EarliestStart(unmask, Math.Max(on.End, notBefore), place) > on.Start + LimitMinutes(unmask.Activity.Work);

    private int LimitMinutes(int takes) => Math.Max(0, place.TapeLimitMinutes - takes);

    private void Limit(NetworkSketch sketch, int tape, WorkNode later, int takes)
    {
        if (putOn[tape].Activity.Fixed is not null && later.Activity.Fixed is not null)
            return;

        var window = new Window(Wait.FromEnd(0), Wait.FromStart(LimitMinutes(takes)));
        sketch.Add(new WorkLink(
            new Link(putOn[tape].Id, later.Id, [window]) { Unless = [.. putOn.Skip(tape + 1).Select(again => again.Id)] },
            FilmStage.Done,
            null,
            Tape: true));
    }
}
