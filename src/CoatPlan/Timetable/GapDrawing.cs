using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Scheduling;
using Windows = CoatPlan.Climate.Windows;

namespace CoatPlan.Timetable;

/// <summary>Draws what may happen between two coats of a batch: off with the tape, rework or rest, on with the tape, wiped.</summary>
internal sealed class GapDrawing
{
    private readonly NetworkSketch sketch;
    private readonly Batch batch;
    private readonly TapeOnBatch tape;
    private readonly SurfaceAir air;
    private readonly Workplace place;

    public GapDrawing(NetworkSketch sketch, Batch batch, TapeOnBatch tape, SurfaceAir air, Workplace place)
    {
        this.sketch = sketch;
        this.batch = batch;
        this.tape = tape;
        this.air = air;
        this.place = place;
    }

    /// <summary>Draws the gap between two coats that follow each other.</summary>
    public void Draw(WorkNode earlier, WorkNode later)
    {
        var windows = WindowsBetween(earlier.Coat!, later.Coat!);
        var between = BetweenLayers(earlier.Coat!, later.Coat!);
        if (later.Activity.Fixed is not null)
        {
            Add(earlier, later, [.. windows.Select((_, k) => new GapChoice(k, Reworked: false, Rested: false, Unmasked: false))], [], isDulled: true, []);
            DrawDone(earlier, later, GapChoices.Of(earlier.Coat!, windows, isTaped: true, !between.IsEmpty), between);
            return;
        }

        var ways = GapChoices.Of(earlier.Coat!, windows, tape.IsOn, !between.IsEmpty);
        // The same word is wiped or masked before, between and after coats: which of them was done is told by when.
        var since = place with { Done = place.Done.After(earlier.Activity.Fixed) };
        ImmutableArray<DrawnInGap> drawn = [.. Operations(earlier, later, between, ref ways, since).Select(operation => operation with { Node = sketch.Add(operation.Node) })];
        var meanwhile = drawn.Select(operation => operation.Node).FirstOrDefault(node => node.Operation!.Word == "remask") is { } remask
            ? new TapeOffMeanwhile(sketch, batch, tape, remask, later, place)
            : null;
        Add(earlier, later, ways, drawn, !between.IsEmpty, meanwhile?.Choice ?? []);
        var wipes = Chain(earlier, later, drawn, ways);

        foreach (var node in drawn.Select(operation => operation.Node))
        {
            if (node.Operation!.Word == "unmask")
                tape.LimitTo(sketch, node, TapeOnBatch.MayComeOff(earlier, air, place));
            else if (node.Operation.Word == "remask")
                tape.GoesOnAgain(node);
        }

        meanwhile?.Draw(wipes);
    }

    /// <summary>The windows of a film for the next coat: its recoat windows under its own product, its topcoat windows under another.</summary>
    public static ImmutableArray<CoatWindow> WindowsBetween(CoatTask film, CoatTask next) => Windows.Of(film.Label, Over(film, next));

    /// <summary>Whether a film is followed by its own product or another.</summary>
    public static RecoatGap Over(CoatTask film, CoatTask next) => film.Label.Key == next.Label.Key ? RecoatGap.Itself : RecoatGap.Another;

    // Behind a coat that is on, what was done before it is a fact; what nobody wrote down goes without saying.
    private void DrawDone(WorkNode earlier, WorkNode later, ImmutableArray<GapChoice> ways, ImmutableArray<Prep.Operation> between)
    {
        var facts = place with { Done = place.Done.After(earlier.Activity.Fixed).Before(later.Activity.Fixed) };
        foreach (var node in Operations(earlier, later, between, ref ways, facts).Select(operation => operation.Node).Where(node => node.Activity.Fixed is not null))
        {
            sketch.Add(node);
            sketch.After(earlier, node);
            sketch.After(node, later);
            if (node.Operation!.Word == "remask")
            {
                tape.GoesOnAgain(node);
                new TapeOffMeanwhile(sketch, batch, tape, node, later, place).Draw([]);
            }
        }
    }

    private ImmutableArray<Prep.Operation> BetweenLayers(CoatTask film, CoatTask next) =>
        next.Layer == film.Layer + 1 ? place.Sequence.BetweenLayers(next.Surfaces, batch.Name, film.Layer) : [];

    // All operations of all ways, each once, in the order of the work, with the ways that have it. What is done already is part of every way.
    private ImmutableArray<DrawnInGap> Operations(
        WorkNode earlier, WorkNode later, ImmutableArray<Prep.Operation> always, ref ImmutableArray<GapChoice> ways, Workplace facts)
    {
        var inWays = ways
            .SelectMany(way => InWay(earlier.Coat!, later.Coat!, way, always).Select(operation => (way, operation)))
            .GroupBy(pair => pair.operation.Id)
            .OrderBy(group => PlaceInGap(group.First().operation))
            .ToArray();

        var drawn = inWays.Select(group => new DrawnInGap(Activities.Before(later, group.First().operation, facts), [.. group.Select(pair => pair.way)])).ToArray();
        foreach (var operation in drawn.Where(operation => operation.Node.Activity.Fixed is not null && !BatchDrawing.IsWiped(operation.Node.Operation!)))
        {
            if (ways.Where(operation.Ways.Contains).ToImmutableArray() is { IsEmpty: false } having)
                ways = having;
        }

        // A film is wiped in a rest and in a rework. What was wiped rules out neither, and was done for the simpler of those that are left.
        var (left, wiped, kept) = (ways, new HashSet<string>(StringComparer.Ordinal), ImmutableArray.CreateBuilder<DrawnInGap>());
        foreach (var operation in drawn)
        {
            ImmutableArray<GapChoice> having = [.. operation.Ways.Where(left.Contains)];
            var word = operation.Node.Operation!.Word;
            if (having.IsEmpty)
                continue;

            var isAnothers = operation.Node.Activity.Fixed is not null && BatchDrawing.IsWiped(operation.Node.Operation) && !wiped.Add(word);
            kept.Add(new DrawnInGap(isAnothers ? Activities.Before(later, operation.Node.Operation, place with { Done = place.Done.After(null) }) : operation.Node, having));
        }

        return kept.ToImmutable();
    }

    private IEnumerable<Prep.Operation> InWay(CoatTask film, CoatTask next, GapChoice way, ImmutableArray<Prep.Operation> between)
    {
        var dulling = !way.Reworked ? between : film.Label.Missed == MissedRework.Scuff ? place.Sequence.Rework(next.Surfaces, batch.Name) : [];
        var wipes = !dulling.IsEmpty ? dulling.Where(BatchDrawing.IsWiped) : way.Rested ? Dusted() : [];
        return
        [
            .. way.Unmasked ? batch.Operations.Where(operation => operation.Word == "unmask") : [],
            .. dulling.Where(operation => !BatchDrawing.IsWiped(operation)),
            .. way.Unmasked ? place.Sequence.Remask(next.Surfaces, batch.Name) : [],
            .. wipes,
        ];
    }

    // What takes settled dust off a film that rested: no solvent, which a young film would not stand.
    private IEnumerable<Prep.Operation> Dusted() => batch.Operations.Where(BatchDrawing.IsWiped).TakeLast(1);

    private static int PlaceInGap(Prep.Operation operation) => operation.Word switch
    {
        "unmask" => 0,
        "remask" => 2,
        _ => BatchDrawing.IsWiped(operation) ? 3 : 1,
    };

    // Each way with the tape as it is, and where that is on already and may come off meanwhile, each once more with that.
    private void Add(WorkNode earlier, WorkNode later, ImmutableArray<GapChoice> ways, ImmutableArray<DrawnInGap> drawn, bool isDulled, ImmutableArray<string> meanwhile)
    {
        var film = earlier.Coat!;
        var over = Over(film, later.Coat!);
        var label = Windows.Of(film.Label, over);
        var windows = ways.Select(way => WindowOf(earlier, way, over, label, isDulled) with
        {
            Asks = [.. drawn.Where(operation => operation.Ways.Length < ways.Length && operation.Ways.Contains(way)).Select(operation => operation.Node.Id)],
        }).ToArray();
        var waits = ways.Select(way => way.Reworked
            ? new WaitInWindow(FilmStage.Through, SurfaceAir.LabelTime(film.Label, FilmStage.Through).TotalMinutes, OfLabel(film, way, over, label))
            : new WaitInWindow(FilmStage.Recoat, label[way.Window].From.TotalMinutes, OfLabel(film, way, over, label))).ToArray();
        var offToo = meanwhile.IsEmpty ? [] : windows.Select(window => window with { Asks = window.Asks.AddRange(meanwhile), IsLastResort = true });
        sketch.Add(new WorkLink(new Link(earlier.Id, later.Id, [.. windows, .. offToo]), FilmStage.Recoat, null)
        {
            ByWindow = meanwhile.IsEmpty ? [.. waits] : [.. waits, .. waits],
        });
    }

    private Window OfLabel(CoatTask film, GapChoice way, RecoatGap over, ImmutableArray<CoatWindow> label)
    {
        if (way.Reworked)
            return new Window(Wait.FromEnd(air.Reaching(film, FilmStage.Through))) { IsLastResort = true };

        return new Window(
            Wait.FromEnd(air.Opening(film, over, way.Window)),
            label[way.Window].To is null ? null : Wait.FromStart(air.Closing(film, over, way.Window)));
    }

    // What rests is dusted off, and what is not dusted off does not rest: without this the schedule could rest and leave the dust.
    private Window WindowOf(WorkNode earlier, GapChoice way, RecoatGap over, ImmutableArray<CoatWindow> label, bool isDulled)
    {
        var own = OfLabel(earlier.Coat!, way, over, label);
        if (way.Reworked)
            return own;
        if (way.Rested)
        {
            return way.Unmasked || label[way.Window].From.TotalMinutes >= GapChoices.RestMinutes
                ? own
                : own with { Least = Wait.FromEnd(air.Opening(earlier.Coat!, over, way.Window, GapChoices.RestMinutes)) };
        }

        if (isDulled)
            return own;

        // A coat is sprayed in one go, so that its end follows from its start; that of a fact is known.
        if (earlier.Activity.Fixed is { } fact)
            return own with { Most = Wait.FromStart(start => Math.Min(own.Most?.Moment!(start) ?? int.MaxValue, fact.End + GapChoices.RestMinutes - 1)) };

        var within = earlier.Activity.Work + GapChoices.RestMinutes - 1;
        return own with
        {
            Most = own.Most is null ? Wait.FromStart(within) : Wait.FromStart(air.Closing(earlier.Coat!, over, way.Window, within)),
        };
    }

    // The wipes that are held together with the later coat.
    private ImmutableArray<WorkNode> Chain(WorkNode earlier, WorkNode later, ImmutableArray<DrawnInGap> drawn, ImmutableArray<GapChoice> ways)
    {
        for (var i = 0; i < drawn.Length; i++)
        {
            var node = drawn[i].Node;
            sketch.Add(BatchDrawing.AfterStage(
                earlier, node, StageFor(node.Operation!, drawn[i].Ways), air, node.Operation!.Word == "unmask" ? place.LeastBeforeUnmaskMinutes : 0));

            var next = i + 1;
            for (; next < drawn.Length; next++)
            {
                // What is done already waits for nothing: then what follows it does.
                BatchDrawing.LinkOperation(sketch, node, drawn[next].Node, place);
                if (drawn[next].Ways.Length == ways.Length && (drawn[next].Node.Activity.Fixed is null || node.Activity.Fixed is not null))
                    break;
            }

            if (next == drawn.Length)
                BatchDrawing.LinkOperation(sketch, node, later, place);
        }

        return BatchDrawing.Wipe(sketch, drawn.Select(operation => operation.Node).Where(node => BatchDrawing.IsWiped(node.Operation!)), later, place);
    }

    private static FilmStage StageFor(Prep.Operation operation, ImmutableArray<GapChoice> ways) => operation.Word switch
    {
        "unmask" => FilmStage.Touch,
        "remask" => FilmStage.Tape,
        "scuff" when ways.Any(way => !way.Reworked) => FilmStage.Handle,
        _ => ways.All(way => way.Reworked) ? FilmStage.Through : FilmStage.Touch,
    };

    private sealed record DrawnInGap(WorkNode Node, ImmutableArray<GapChoice> Ways);
}
