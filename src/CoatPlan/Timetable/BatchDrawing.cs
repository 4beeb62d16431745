using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Scheduling;
using Windows = CoatPlan.Climate.Windows;

namespace CoatPlan.Timetable;

/// <summary>Draws one batch into the network: what is done before its coats, the coats with their gaps, what is done after.</summary>
internal static class BatchDrawing
{
    private const int CoatStage = 7;
    private static readonly ImmutableArray<string> WipedInOneGo = ["final-wipe", "tack"];

    /// <summary>Draws a batch.</summary>
    /// <param name="sketch">The network so far, the operations of the whole job in it.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="gaps">How each gap between its coats is passed.</param>
    /// <param name="productIndex">From a label to the number its films have in the shared space.</param>
    /// <param name="place">What the network is drawn from.</param>
    public static BatchNodes Draw(
        NetworkSketch sketch, Batch batch, ImmutableArray<GapChoice> gaps, Func<Label, int> productIndex, Workplace place)
    {
        var air = place.AirAround.Of(batch.Surfaces);
        var placed = Placed(batch, place);
        var begun = placed.Any(placement => placement is not null);
        // The same word is wiped or masked before, between and after coats: which of them was done is told by when.
        var (early, late) = (place with { Done = place.Done.Before(placed[0]) }, place with { Done = place.Done.After(placed[^1]) });
        var drawn = batch.Operations
            .Where(operation => !begun || operation.Stage > CoatStage || early.Done.Of(operation.Word, operation.Surfaces, 1) is not null)
            .Select(operation => sketch.Add(Activities.Of(operation, operation.Id, batch.Station, batch, operation.Stage > CoatStage ? late : early)))
            .ToImmutableArray();
        foreach (var node in drawn)
            LinkToEarlier(sketch, node, place);

        var before = drawn.Where(node => node.Operation!.Stage < CoatStage).ToImmutableArray();
        var coats = batch.Coats
            .Select((coat, index) => sketch.Add(Activities.Of(coat, batch, air, productIndex(coat.Label), placed[index], place)))
            .ToImmutableArray();

        foreach (var node in before.Where(sketch.IsLast).ToArray())
            LinkOperation(sketch, node, coats[0], place);
        foreach (var node in before.Where(node => WipedInOneGo.Contains(node.Operation!.Word)))
            sketch.Add(WithinOneGo(node, coats[0], place));

        var mask = before.LastOrDefault(node => node.Operation!.Word == "mask");
        for (var gap = 0; gap < gaps.Length; gap++)
            mask = DrawGap(sketch, batch, coats[gap], coats[gap + 1], gap, gaps[gap], mask, air, place);

        DrawEnd(sketch, drawn, coats[^1], mask, air, place);
        if (!batch.Stays && place.Job.Place.Rack is not null)
        {
            sketch.Add(new Hold(
                SharedSpace.Rack, batch.Pieces, coats[0].Id, coats[^1].Id, end => air.Reaches(coats[^1].Coat!, FilmStage.Handle, end)));
        }

        return new BatchNodes(batch, before, coats, drawn);
    }

    // A coat that was put on says that what comes before it was done too, whether somebody wrote it down or not.
    private static ImmutableArray<Placement?> Placed(Batch batch, Workplace place)
    {
        var placed = new Placement?[batch.Coats.Length];
        int? nextStart = null;
        for (var i = placed.Length - 1; i >= 0; i--)
        {
            var work = Activities.Minutes(batch.Coats[i].Hands);
            placed[i] = place.Done.Of(batch.Coats[i], work) ?? (nextStart is { } next ? new Placement(next - work, next) : null);
            nextStart = placed[i]?.Start;
        }

        return [.. placed];
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
            Link.After(earlier.Id, later.Id, Wait.FromEnd(end => air.DriesOff(wait, end))), FilmStage.Done, null));
    }

    private static WorkLink WithinOneGo(WorkNode wipe, WorkNode coat, Workplace place) =>
        new(
            new Link(wipe.Id, coat.Id, [new Window(Wait.FromEnd(0), Wait.FromEnd(place.WipeHoldsMinutes))]),
            FilmStage.Done,
            null);

    // Between two coats: off with the tape, rework or rest, on with the tape, wiped; each also waits for its own stage of the film below.
    private static WorkNode? DrawGap(
        NetworkSketch sketch, Batch batch, WorkNode earlier, WorkNode later, int gap, GapChoice choice, WorkNode? mask, SurfaceAir air, Workplace place)
    {
        sketch.Add(choice.Reworked ? AfterStage(earlier, later, FilmStage.Through, air, 0) : InWindow(earlier, later, choice.Window, gap, air));

        var suffix = FormattableString.Invariant($"/{later.Coat!.Layer}.{later.Coat.Coat}");
        var between = place with { Done = place.Done.After(earlier.Activity.Fixed).Before(later.Activity.Fixed) };
        WorkNode? last = null;
        foreach (var operation in BetweenCoats(batch, earlier.Coat!, later.Coat, choice, mask is not null, place))
        {
            var node = sketch.Add(Activities.Of(operation, operation.Id + suffix, batch.Station, batch, between));
            sketch.Add(AfterStage(earlier, node, StageFor(operation, choice), air, operation.Word == "unmask" ? place.LeastBeforeUnmaskMinutes : 0));
            if (last is not null)
                LinkOperation(sketch, last, node, place);
            if (operation.Word == "unmask")
                sketch.Add(TapeOn(mask!, node, place));
            else if (operation.Word == "remask")
                mask = node;
            if (WipedInOneGo.Contains(operation.Word))
                sketch.Add(WithinOneGo(node, later, place));
            last = node;
        }

        if (last is null)
            return mask;

        LinkOperation(sketch, last, later, place);
        return mask;
    }

    private static IEnumerable<Prep.Operation> BetweenCoats(
        Batch batch, CoatTask film, CoatTask next, GapChoice choice, bool isMasked, Workplace place)
    {
        var tapeOff = choice.Unmasked && isMasked;
        var dulling = Dulling(batch, film, next, choice, place);
        var wipes = dulling.Any() ? dulling.Where(operation => WipedInOneGo.Contains(operation.Word)) : choice.Rested ? Dusted(batch) : [];
        return
        [
            .. tapeOff ? batch.Operations.Where(operation => operation.Word == "unmask") : [],
            .. dulling.Where(operation => !WipedInOneGo.Contains(operation.Word)),
            .. tapeOff ? place.Sequence.Remask(next.Surfaces, batch.Name) : [],
            .. wipes,
        ];
    }

    // What a missed window asks of the film, or a layer that is there to be sanded.
    private static ImmutableArray<Prep.Operation> Dulling(Batch batch, CoatTask film, CoatTask next, GapChoice choice, Workplace place)
    {
        if (choice.Reworked)
            return film.Label.Missed == MissedRework.Scuff ? place.Sequence.Rework(next.Surfaces, batch.Name) : [];
        return next.Layer == film.Layer + 1 ? place.Sequence.BetweenLayers(next.Surfaces, batch.Name, film.Layer) : [];
    }

    // What takes settled dust off a film that rested: no solvent, which a young film would not stand.
    private static IEnumerable<Prep.Operation> Dusted(Batch batch) =>
        batch.Operations.Where(operation => WipedInOneGo.Contains(operation.Word)).TakeLast(1);

    private static FilmStage StageFor(Prep.Operation operation, GapChoice choice) => operation.Word switch
    {
        "unmask" => FilmStage.Touch,
        "remask" => FilmStage.Tape,
        "scuff" when !choice.Reworked => FilmStage.Handle,
        _ => choice.Reworked ? FilmStage.Through : FilmStage.Touch,
    };

    private static WorkLink InWindow(WorkNode earlier, WorkNode later, int index, int gap, SurfaceAir air)
    {
        var film = earlier.Coat!;
        var over = Over(film, later.Coat!);
        var window = Windows.Of(film.Label, over)[index];
        var opens = Wait.FromEnd(end => air.Opens(film, over, index, end));
        var closes = window.To is null ? null : Wait.FromStart(start => air.Closes(film, over, index, start));
        return new WorkLink(
            new Link(earlier.Id, later.Id, [new Window(opens, closes)]), FilmStage.Recoat, window.From.TotalMinutes, gap);
    }

    /// <summary>The windows of a film for the next coat: its recoat windows under its own product, its topcoat windows under another.</summary>
    internal static ImmutableArray<CoatWindow> WindowsBetween(CoatTask film, CoatTask next) => Windows.Of(film.Label, Over(film, next));

    private static RecoatGap Over(CoatTask film, CoatTask next) => film.Label.Key == next.Label.Key ? RecoatGap.Itself : RecoatGap.Another;

    private static WorkLink AfterStage(WorkNode coat, WorkNode later, FilmStage stage, SurfaceAir air, int leastMinutes)
    {
        var film = coat.Coat!;
        return new WorkLink(
            Link.After(coat.Id, later.Id, Wait.FromEnd(end => Math.Max(air.Outwaits(film, Duration.FromMinutes(leastMinutes), end), air.Reaches(film, stage, end)))),
            stage,
            SurfaceAir.LabelTime(film.Label, stage).TotalMinutes);
    }

    // Tape is on from the mask's start until the unmasking's end.
    private static WorkLink TapeOn(WorkNode mask, WorkNode unmask, Workplace place) =>
        new(
            new Link(
                mask.Id,
                unmask.Id,
                [new Window(Wait.FromEnd(0), Wait.FromStart(Math.Max(0, place.TapeLimitMinutes - unmask.Activity.Work)))]),
            FilmStage.Done,
            null,
            Tape: true);

    private static void DrawEnd(
        NetworkSketch sketch, ImmutableArray<WorkNode> drawn, WorkNode lastCoat, WorkNode? mask, SurfaceAir air, Workplace place)
    {
        foreach (var node in drawn.Where(node => node.Operation!.Stage > CoatStage))
        {
            switch (node.Operation!.Word)
            {
                case "unmask":
                    sketch.Add(AfterStage(lastCoat, node, FilmStage.Touch, air, place.LeastBeforeUnmaskMinutes));
                    if (mask is not null)
                        sketch.Add(TapeOn(mask, node, place));
                    break;
                case "heat-cure":
                    sketch.Add(AfterStage(lastCoat, node, FilmStage.Through, air, 0));
                    break;
                default:
                    sketch.Add(AfterStage(lastCoat, node, FilmStage.Handle, air, 0));
                    break;
            }
        }
    }
}
