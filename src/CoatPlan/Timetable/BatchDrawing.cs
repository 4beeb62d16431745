using CoatPlan.Presets;
using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>Draws one batch into the network: what is done before its coats, the coats with their gaps, what is done after.</summary>
internal static class BatchDrawing
{
    private static readonly ImmutableArray<string> WipedInOneGo = ["final-wipe", "tack"];

    /// <summary>Whether an operation wipes a surface for the coat that follows in the same go.</summary>
    internal static bool IsWiped(Prep.Operation operation) => WipedInOneGo.Contains(operation.Word);

    /// <summary>Draws a batch.</summary>
    /// <param name="sketch">The network so far, the operations of the whole job in it.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="productIndex">From a label to the number its films have in the shared space.</param>
    /// <param name="place">What the network is drawn from.</param>
    public static BatchNodes Draw(
        NetworkSketch sketch, Batch batch, Func<Label, int> productIndex, Workplace place)
    {
        var air = place.AirAround.Of(batch.Surfaces);
        var placed = Placed(batch, place);
        var begun = placed.Any(placement => placement is not null);
        // The same word is wiped or masked before, between and after coats: which of them was done is told by when.
        var (early, late) = (place with { Done = place.Done.Before(placed[0]?.At) }, place with { Done = place.Done.After(placed[^1]?.At) });
        var drawn = batch.Operations
            .Where(operation => !begun || operation.Stage > Stages.Coat || early.Done.Of(operation.Word, operation.Surfaces, 1) is not null)
            .Select(operation => sketch.Add(Activities.Of(operation, operation.Id, batch.Station, batch, operation.Stage > Stages.Coat ? late : early)))
            .ToImmutableArray();
        foreach (var node in drawn)
            LinkToEarlier(sketch, node, place);

        var before = drawn.Where(node => node.Operation!.Stage < Stages.Coat).ToImmutableArray();
        var coats = batch.Coats
            .Select((coat, index) => sketch.Add(Activities.Of(coat, batch, air, productIndex(coat.Label), placed[index], place)))
            .ToImmutableArray();

        foreach (var node in before.Where(sketch.IsLast).ToArray())
            LinkOperation(sketch, node, coats[0], place);
        var mask = before.LastOrDefault(node => node.Operation!.Word == "mask");
        var tape = new TapeOnBatch(mask, drawn.Where(node => node.Operation!.Word == "unmask").Select(node => node.Activity.Work).FirstOrDefault(), place);
        var wipes = Wipe(sketch, before.Where(node => IsWiped(node.Operation!)), coats[0], place);
        if (mask is not null)
            TakeOffMeanwhile(sketch, mask, coats[0], wipes, new TapeOffMeanwhile(sketch, batch, tape, mask, coats[0], place));

        var gaps = new GapDrawing(sketch, batch, tape, air, place);
        tape.LimitBefore(sketch, coats[0]);
        for (var i = 1; i < coats.Length; i++)
        {
            gaps.Draw(coats[i - 1], coats[i]);
            tape.LimitBefore(sketch, coats[i]);
        }

        DrawEnd(sketch, drawn, coats, tape, air, place);
        if (!batch.Stays && place.Job.Place.Rack is not null)
        {
            sketch.Add(new Hold(
                SharedSpace.Rack, batch.Pieces, coats[0].Id, coats[^1].Id, air.Reaching(coats[^1].Coat!, FilmStage.Handle)));
        }

        return new BatchNodes(batch, before, coats, drawn);
    }

    // A coat that was put on says that what comes before it was done too, whether somebody wrote it down or not.
    private static ImmutableArray<DoneWork?> Placed(Batch batch, Workplace place)
    {
        var placed = new DoneWork?[batch.Coats.Length];
        int? nextStart = null;
        for (var i = placed.Length - 1; i >= 0; i--)
        {
            var work = Activities.Minutes(batch.Coats[i].Hands);
            placed[i] = place.Done.Of(batch.Coats[i], work) ?? (nextStart is { } next ? new DoneWork(new Placement(next - work, next), work) : null);
            nextStart = placed[i]?.At.Start;
        }

        return [.. placed];
    }

    private static void TakeOffMeanwhile(NetworkSketch sketch, WorkNode mask, WorkNode coat, ImmutableArray<WorkNode> wipes, TapeOffMeanwhile meanwhile)
    {
        meanwhile.Draw(wipes);
        if (meanwhile.Choice is not { IsEmpty: false } choice)
            return;

        var stays = new Window(Wait.FromEnd(0));
        sketch.Add(new WorkLink(new Link(mask.Id, coat.Id, [stays, stays with { Asks = choice, IsLastResort = true }]), FilmStage.Done, null));
    }

    // Operations named by an operation's After are of the same batch or of the whole job, at the same station.
    private static void LinkToEarlier(NetworkSketch sketch, WorkNode node, Workplace place)
    {
        foreach (var id in node.Operation!.After)
        {
            if (sketch.Find(Batch.StationId(id, node.Station)) is { } earlier)
                LinkOperation(sketch, earlier, node, place);
        }
    }

    internal static void LinkOperation(NetworkSketch sketch, WorkNode earlier, WorkNode later, Workplace place)
    {
        var wait = earlier.Operation!.Wait;
        if (wait.Kind == Prep.WaitKind.None)
        {
            sketch.After(earlier, later);
            return;
        }

        var air = place.AirAround.Of(earlier.Operation.Surfaces);
        sketch.Add(new WorkLink(
            Link.After(earlier.Id, later.Id, Wait.FromEnd(air.DryingOff(wait))), FilmStage.Done, null));
    }

    /// <summary>Holds wipes and the coat that they are for together; one that is done already, too long before anything can be sprayed, is done again.</summary>
    /// <param name="sketch">The network so far, the wipes in it, in their order.</param>
    /// <param name="wipes">The wipes.</param>
    /// <param name="coat">The coat.</param>
    /// <param name="place">What the network is drawn from.</param>
    /// <returns>The wipes that are held together with the coat.</returns>
    internal static ImmutableArray<WorkNode> Wipe(NetworkSketch sketch, IEnumerable<WorkNode> wipes, WorkNode coat, Workplace place)
    {
        var held = ImmutableArray.CreateBuilder<WorkNode>();
        WorkNode? again = null;
        foreach (var wipe in wipes.ToArray())
        {
            var holding = wipe;
            if (wipe.Activity.Fixed is { } fact && coat.Activity.Fixed is null && (again is not null || Activities.EarliestStart(coat, fact.End, place) > fact.End + place.WipeHoldsMinutes))
            {
                holding = sketch.Add(Activities.Of(wipe.Operation!, "again-" + Batch.IdWithoutStation(wipe.Id, wipe.Station), wipe.Station, wipe.Batch, place with { Done = place.Done.After(null) }));
                sketch.After(wipe, holding);
                LinkOperation(sketch, holding, coat, place);
            }

            if (again is not null)
                LinkOperation(sketch, again, holding, place);
            again = ReferenceEquals(holding, wipe) ? again : holding;
            sketch.Add(WithinOneGo(holding, coat, place));
            held.Add(holding);
        }

        return held.ToImmutable();
    }

    internal static WorkLink WithinOneGo(WorkNode wipe, WorkNode coat, Workplace place) =>
        new(
            new Link(wipe.Id, coat.Id, [new Window(Wait.FromEnd(0), Wait.FromEnd(place.WipeHoldsMinutes))]),
            FilmStage.Done,
            null);

    internal static WorkLink AfterStage(WorkNode coat, WorkNode later, FilmStage stage, SurfaceAir air, int leastMinutes)
    {
        var film = coat.Coat!;
        return new WorkLink(
            Link.After(coat.Id, later.Id, Wait.FromEnd(air.ReachingAfter(film, stage, leastMinutes))),
            stage,
            SurfaceAir.LabelTime(film.Label, stage).TotalMinutes);
    }

    private static void DrawEnd(
        NetworkSketch sketch, ImmutableArray<WorkNode> drawn, ImmutableArray<WorkNode> coats, TapeOnBatch tape, SurfaceAir air, Workplace place)
    {
        // A film below may take longer than the one over it: the last coat of every layer is waited for.
        var lastCoat = coats[^1];
        var lastOfLayers = coats.Where((coat, i) => i == coats.Length - 1 || coats[i + 1].Coat!.Layer != coat.Coat!.Layer).Reverse().ToArray();
        foreach (var node in drawn.Where(node => node.Operation!.Stage > Stages.Coat))
        {
            switch (node.Operation!.Word)
            {
                case "unmask":
                    sketch.Add(AfterStage(lastCoat, node, FilmStage.Touch, air, place.LeastBeforeUnmaskMinutes));
                    tape.LimitTo(sketch, node, TapeOnBatch.MayComeOff(lastCoat, air, place));
                    break;
                case "heat-cure":
                    foreach (var coat in lastOfLayers)
                        sketch.Add(AfterStage(coat, node, FilmStage.Through, air, 0));
                    break;
                default:
                    foreach (var coat in lastOfLayers)
                        sketch.Add(AfterStage(coat, node, FilmStage.Handle, air, 0));
                    break;
            }
        }
    }
}
