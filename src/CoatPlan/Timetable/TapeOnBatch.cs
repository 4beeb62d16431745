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

    /// <summary>Tape comes off in time, counted from the last time that it went on.</summary>
    public void LimitTo(NetworkSketch sketch, WorkNode unmask) => Limit(sketch, unmask, unmask.Activity.Work);

    /// <summary>After a coat the tape can still come off in time: what follows from the limit before the unmasking itself is placed.</summary>
    public void LimitBefore(NetworkSketch sketch, WorkNode coat) => Limit(sketch, coat, coat.Activity.Work + leastToComeOff);

    private void Limit(NetworkSketch sketch, WorkNode later, int takes)
    {
        for (var i = 0; i < putOn.Count; i++)
        {
            if (putOn[i].Activity.Fixed is not null && later.Activity.Fixed is not null)
                continue;

            var window = new Window(Wait.FromEnd(0), Wait.FromStart(Math.Max(0, place.TapeLimitMinutes - takes)));
            sketch.Add(new WorkLink(
                new Link(putOn[i].Id, later.Id, [window]) { Unless = [.. putOn.Skip(i + 1).Select(again => again.Id)] },
                FilmStage.Done,
                null,
                Tape: true));
        }
    }
}
