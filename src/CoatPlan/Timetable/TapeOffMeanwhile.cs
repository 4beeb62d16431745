using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>
/// Tape that is on already before the first coat, which may not follow in time: then it comes off, and goes on again before the coat. Before anything is done
/// there is no such way: the mask itself can come later.
/// </summary>
internal static class TapeOffMeanwhile
{
    /// <summary>Draws it for a batch; nothing where the mask can still move; where the coat is on, what was done of it.</summary>
    /// <param name="sketch">The network so far.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="tape">The tape on it.</param>
    /// <param name="mask">What put it on.</param>
    /// <param name="wipes">What is wiped in one go with the coat.</param>
    /// <param name="coat">The first coat.</param>
    /// <param name="place">What the network is drawn from.</param>
    public static void Draw(NetworkSketch sketch, Batch batch, TapeOnBatch tape, WorkNode mask, ImmutableArray<WorkNode> wipes, WorkNode coat, Workplace place)
    {
        if (mask.Activity.Fixed is not { } on || place.TapeLimitMinutes > Clock.Horizon)
            return;

        var meanwhile = Meanwhile(batch, on, coat, place);
        var before = mask;
        foreach (var node in meanwhile)
        {
            sketch.Add(node);
            BatchDrawing.LinkOperation(sketch, before, node, place);
            before = node;
        }

        foreach (var node in meanwhile)
        {
            if (node.Operation!.Word == "unmask")
            {
                tape.LimitTo(sketch, node, notBefore: 0);
                continue;
            }

            // It waits for what the first mask waited for.
            foreach (var id in mask.Operation!.After)
            {
                if (node.Activity.Fixed is null && sketch.Find(Batch.StationId(id, node.Station)) is { } earlier)
                    BatchDrawing.LinkOperation(sketch, earlier, node, place);
            }

            tape.GoesOnAgain(node);
        }

        if (meanwhile.IsEmpty)
            return;

        foreach (var next in wipes.Where(wipe => wipe.Activity.Fixed is null).Append(coat))
            BatchDrawing.LinkOperation(sketch, before, next, place);
        // What is done of it is no longer a choice.
        if (meanwhile.All(node => node.Activity.Fixed is null))
            sketch.Add(new WorkLink(new Link(mask.Id, coat.Id, Ways(meanwhile)), FilmStage.Done, null));
    }

    private static ImmutableArray<Window> Ways(ImmutableArray<WorkNode> meanwhile)
    {
        var staysOn = new Window(Wait.FromEnd(0));
        return [staysOn, staysOn with { Asks = [.. meanwhile.Select(node => node.Id)], IsLastResort = true }];
    }

    // Off, and on again; of what is behind a coat, or behind tape that is on again, only what was done.
    private static ImmutableArray<WorkNode> Meanwhile(Batch batch, Placement mask, WorkNode coat, Workplace place)
    {
        var since = place with { Done = coat.Activity.Fixed is { } put ? place.Done.After(mask).Before(put) : place.Done.After(mask) };
        var off = batch.Operations.Where(operation => operation.Word == "unmask").Select(NodeOf).ToImmutableArray();
        var again = place.Sequence.Remask(coat.Coat!.Surfaces, batch.Name).Select(NodeOf).ToImmutableArray();
        if (again.IsEmpty)
            return [];

        var isPast = coat.Activity.Fixed is not null;
        var isOnAgain = again.Any(node => node.Activity.Fixed is not null);
        return
        [
            .. off.Where(node => node.Activity.Fixed is not null || !(isPast || isOnAgain)),
            .. again.Where(node => node.Activity.Fixed is not null || !isPast),
        ];

        WorkNode NodeOf(Prep.Operation operation) =>
            Activities.Of(operation, FormattableString.Invariant($"{operation.Id}/{coat.Coat!.Layer}.{coat.Coat.Coat}"), batch.Station, batch, since);
    }
}
