using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>
/// Tape that is on already, and a coat that may not follow in time: then it comes off, and goes on again before the coat. Tape that is not on yet needs no
/// such way: it can go on later.
/// </summary>
internal sealed class TapeOffMeanwhile
{
    private const string Again = "again-";

    private readonly NetworkSketch sketch;
    private readonly TapeOnBatch tape;
    private readonly WorkNode coat;
    private readonly Workplace place;

    // Each time that it comes off and goes on: what put on the tape that comes off, and the work.
    private readonly List<(WorkNode Taped, ImmutableArray<WorkNode> Work)> times = [];

    /// <summary>Adds the work: each time that it was done, and once more where the coat is not on; none where the tape can still go on later.</summary>
    /// <param name="sketch">The network so far.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="tape">The tape on it.</param>
    /// <param name="on">What put the tape on.</param>
    /// <param name="coat">The coat that the tape went on for.</param>
    /// <param name="place">What the network is drawn from.</param>
    public TapeOffMeanwhile(NetworkSketch sketch, Batch batch, TapeOnBatch tape, WorkNode on, WorkNode coat, Workplace place)
    {
        (this.sketch, this.tape, this.coat, this.place) = (sketch, tape, coat, place);
        if (place.TapeLimitMinutes > Clock.Horizon)
            return;

        // Each time that it goes on is a fact that ended later than the one before, so that there is an end to it.
        var again = on.Operation!.Word == "mask" ? "" : Again;
        for (var taped = on; taped?.Activity.Fixed is { } since; again += Again)
        {
            var work = Work(batch, since, again);
            if (!work.IsEmpty)
                times.Add((taped, [.. work.Select(sketch.Add)]));
            taped = work.LastOrDefault();
        }
    }

    /// <summary>What is still open of it and done only where something asks for it; empty where nothing is, or where some of it is done.</summary>
    public ImmutableArray<string> Choice => times is [.., var last] && last.Work.All(node => node.Activity.Fixed is null) ? [.. last.Work.Select(node => node.Id)] : [];

    /// <summary>Puts the work in its order.</summary>
    /// <param name="wipes">What is wiped in one go with the coat.</param>
    public void Draw(ImmutableArray<WorkNode> wipes)
    {
        foreach (var (taped, work) in times)
        {
            var before = taped;
            foreach (var node in work)
            {
                BatchDrawing.LinkOperation(sketch, before, node, place);
                before = node;
                if (node.Operation!.Word == "unmask")
                    tape.LimitTo(sketch, node, notBefore: 0);
                else
                    GoesOn(node, taped);
            }

            foreach (var next in wipes.Where(wipe => wipe.Activity.Fixed is null).Append(coat))
                BatchDrawing.LinkOperation(sketch, before, next, place);
        }
    }

    // Off, and on again; of what is behind a coat, or behind tape that is on again, only what was done.
    private ImmutableArray<WorkNode> Work(Batch batch, Placement taped, string again)
    {
        var since = place with { Done = coat.Activity.Fixed is { } put ? place.Done.After(taped).Before(put) : place.Done.After(taped) };
        var off = batch.Operations.Where(operation => operation.Word == "unmask").Select(NodeOf).ToImmutableArray();
        var on = place.Sequence.Remask(coat.Coat!.Surfaces, batch.Name).Select(NodeOf).ToImmutableArray();
        if (on.IsEmpty)
            return [];

        var isPast = coat.Activity.Fixed is not null;
        var onAgain = on[0].Activity.Fixed;
        return
        [
            .. off.Where(node => node.Activity.Fixed is { } fact ? onAgain is null || fact.End <= onAgain.Value.End : !isPast && onAgain is null),
            .. on.Where(node => node.Activity.Fixed is not null || !isPast),
        ];

        WorkNode NodeOf(Prep.Operation operation) => Activities.Before(coat, operation, since, again);
    }

    // After what the tape before it waited for, too.
    private void GoesOn(WorkNode node, WorkNode taped)
    {
        foreach (var id in taped.Operation!.After)
        {
            if (node.Activity.Fixed is null && sketch.Find(Batch.StationId(id, node.Station)) is { Activity.Fixed: null } earlier)
                BatchDrawing.LinkOperation(sketch, earlier, node, place);
        }

        tape.GoesOnAgain(node);
    }
}
