using System.Collections.Concurrent;

namespace CoatPlan.Prep;

/// <summary>Turns surfaces that are worked on together into their operations.</summary>
internal sealed record BatchPreparation(PrepContext Context)
{
    private readonly Dictionary<string, int> placeOf = Context.Surfaces
        .Select((surface, place) => (surface.Id, place))
        .ToDictionary(pair => pair.Id, pair => pair.place, StringComparer.Ordinal);

    // A group is asked for when the sequence is built, when it is dated, at each of its gaps, once for each station of a class and for each weather of a chance: its
    // operations are the same each time.
    private readonly ConcurrentDictionary<Asked, (ImmutableArray<string> Surfaces, ImmutableArray<Operation> Operations)> newest = new();

    /// <summary>The surface of an id of the job.</summary>
    public SettledSurface Surface(string id) => Context.Surfaces[placeOf[id]];

    /// <summary>See <see cref="Sequence.ForBatch"/>.</summary>
    public ImmutableArray<Operation> Operations(ImmutableArray<string> surfaces, string batch) => Once("batch", batch, surfaces, 0, settled =>
        Chain(Words(settled, row => !row.OncePerJob && row.Word != "remask").Select(row => Operation(row, settled, batch))));

    /// <summary>See <see cref="Sequence.Remask"/>.</summary>
    public ImmutableArray<Operation> Remask(ImmutableArray<string> surfaces, string batch) => Once("remask", batch, surfaces, 0, settled =>
        [
            .. Words(settled, row => row.Word == "mask").Select(row => Operation(row, settled, batch)).Select(mask => mask with
            {
                Id = $"remask/{batch}",
                Word = "remask",
                Stage = Context.Catalogue.Operation("remask").Stage,
                Order = Context.Catalogue.Operation("remask").Order,
                Title = $"Mask again: {settled.Names}",
                Why = "The tape came off at its limit or for another colour, and goes on again before the next coat. (common practice)",
                After = [],
            }),
        ]);

    /// <summary>See <see cref="Sequence.Rework"/>.</summary>
    public ImmutableArray<Operation> Rework(ImmutableArray<string> surfaces, string batch) =>
        Once("rework", batch, surfaces, 0, settled => Dulled(settled, batch, "rework", AfterMissedWindow, WhyRework));

    /// <summary>See <see cref="Sequence.BetweenLayers"/>.</summary>
    public ImmutableArray<Operation> BetweenLayers(ImmutableArray<string> surfaces, string batch, int layer) =>
        Once("over", batch, surfaces, layer, settled => BetweenLayers(settled, batch, layer));

    private ImmutableArray<Operation> BetweenLayers(NamedSurfaces settled, string batch, int layer)
    {
        var layers = settled.All[0].Layers;
        if (layer < 1 || layer >= layers.Length)
            throw new ArgumentException($"The layer is {layer}; it is at least 1 and below the last, {layers.Length}.", nameof(layer));

        var (below, above) = (layers[layer - 1].Label, layers[layer].Label);
        var row = Context.Rules.Between.FirstOrDefault(row => row.Class == below.Preset);
        if (row is null || below.Key == above.Key)
            return [];

        var why = Sentence.Fill(row.Why, row.Source, row.Status, name => name == "below" ? below.Name : name == "above" ? above.Name : null);
        return Dulled(settled, batch, FormattableString.Invariant($"over-{layer}"), row.Way, why);
    }

    private ImmutableArray<Operation> Once(string what, string batch, ImmutableArray<string> surfaces, int layer, Func<NamedSurfaces, ImmutableArray<Operation>> make)
    {
        var count = surfaces.IsDefault ? 0 : surfaces.Length;
        var asked = new Asked(what, batch, layer, count);
        if (count > 0 && newest.TryGetValue(asked, out var known) && known.Surfaces.AsSpan().SequenceEqual(surfaces.AsSpan()))
            return known.Operations;

        var operations = make(new NamedSurfaces(Settled(surfaces)));
        newest[asked] = (surfaces, operations);
        return operations;
    }

    // Of a batch that grows or shrinks from layer to layer each size is kept.
    private readonly record struct Asked(string What, string Batch, int Layer, int Surfaces);

    private const string AfterMissedWindow = "pad";

    private const string WhyRework =
        "The next coat goes on after the window for it has closed: the film is by then dry in full, and is dulled and cleaned first, or the coat wrinkles it or does not hold. (common practice)";

    private static ImmutableArray<string> DullingWords { get; } = ["scuff", "blow-off", "final-wipe", "tack"];

    private ImmutableArray<Operation> Dulled(NamedSurfaces settled, string batch, string prefix, string scuffWay, string why) =>
        Unopened(DullingWords.Select(word => Dulling(Context.Catalogue.Operation(word), settled, batch, scuffWay) is var operation
            ? operation with { Id = $"{prefix}-{operation.Id}", Why = why }
            : operation));

    // On new film, not on the old one: no lead in it and nothing to keep wet for; only the wipe still heeds the plastic below.
    private Operation Dulling(Presets.Operation row, NamedSurfaces settled, string batch, string scuffWay)
    {
        var way = row.Word switch
        {
            "scuff" => Context.Rules.Way(row.Word, scuffWay),
            "final-wipe" => settled.All.Select(surface => surface.Operations.GetValueOrDefault(row.Word)?.Way).FirstOrDefault(way => way is not null),
            _ => Context.Rules.Ways.FirstOrDefault(way => way.Operation == row.Word),
        };
        var plain = new SettledOperation(row.Word, way, [], []);
        var work = settled.All.Select(surface => new SurfaceWork(surface.Id, HandsOn.OnSurface(surface, plain, row, [], Context.Catalogue))).ToImmutableArray();
        return Undone(row, settled.All, batch, work) with
        {
            Title = $"{way?.Title ?? row.Title}: {settled.Names}",
            MakesDust = way?.Dust ?? row.MakesDust,
            Grits = way?.Grits ?? [],
            Wait = way?.Wait is { } id ? Context.Rules.Wait(id, Context.Catalogue) : OperationWait.None,
        };
    }

    private ImmutableArray<SettledSurface> Settled(ImmutableArray<string> surfaces)
    {
        if (surfaces.IsDefaultOrEmpty)
            throw new ArgumentException("A batch has at least one surface.", nameof(surfaces));
        var unknown = surfaces.FirstOrDefault(id => !placeOf.ContainsKey(id));
        if (unknown is not null)
            throw new ArgumentException($"The job has no surface '{unknown}'.", nameof(surfaces));

        return [.. surfaces.Select(id => placeOf[id]).Distinct().Order().Select(place => Context.Surfaces[place])];
    }

    private IEnumerable<Presets.Operation> Words(NamedSurfaces settled, Func<Presets.Operation, bool> wanted) =>
        Context.Catalogue.Operations
            .Where(row => wanted(row) && settled.All.Any(surface => surface.Operations.ContainsKey(row.Word)))
            .OrderBy(row => row.Stage)
            .ThenBy(row => row.Order);

    private Operation Operation(Presets.Operation row, NamedSurfaces batchSurfaces, string batch)
    {
        var (surfaces, settled) = batchSurfaces.Doing(row.Word);
        var work = ImmutableArray.CreateBuilder<SurfaceWork>(settled.Length);
        foreach (var surface in surfaces.All)
            work.Add(new SurfaceWork(surface.Id, HandsOn.OnSurface(surface, settled[work.Count], row, surface.Masked, Context.Catalogue)));

        var title = settled[0].Way?.Title ?? row.Title;
        var oneWay = settled.All(operation => (operation.Way?.Title ?? row.Title) == title);

        return Undone(row, surfaces.All, batch, work.MoveToImmutable()) with
        {
            Title = $"{(oneWay ? title : row.Title)}: {surfaces.Names}",
            Notes =
            [
                .. oneWay ? [] : ByWay(row, surfaces.All),
                .. Reasons.Notes(Reasons.ByRule(surfaces, settled, operation => operation.Notes)),
            ],
            Why = Reasons.Why(Reasons.ByRule(surfaces, settled, operation => operation.Reasons)),
            MakesDust = settled.Any(operation => operation.Way?.Dust ?? row.MakesDust),
            HotWork = settled.Any(operation => operation.Way?.Hot ?? row.HotWork),
            Wait = row.Word == "heat-cure" ? StagedHeat.Longest(surfaces.All, Context.Catalogue, Context.Format) : Longest(row, surfaces.All, settled),
            Masked = row.Word == "mask" ? [.. surfaces.All.SelectMany(surface => surface.Masked.Select(item => Times(item, surface.Measured.Count)))] : [],
            Grits = Grits(settled),
        };
    }

    /// <summary>What is done on which surfaces where not all are done one way.</summary>
    private static IEnumerable<string> ByWay(Presets.Operation row, ImmutableArray<SettledSurface> surfaces) => surfaces
        .GroupBy(surface => surface.Operations[row.Word].Way?.Title ?? row.Title, StringComparer.Ordinal)
        .Select(way => $"{Sentence.List(way.Select(surface => surface.Name))}: {way.Key}");

    private Operation Undone(Presets.Operation row, ImmutableArray<SettledSurface> surfaces, string batch, ImmutableArray<SurfaceWork> work) => new()
    {
        Id = $"{row.Word}/{batch}",
        Word = row.Word,
        Stage = row.Stage,
        Order = row.Order,
        Title = row.Title,
        Scope = OperationScope.SurfaceGroup,
        Batch = batch,
        Surfaces = [.. surfaces.Select(surface => surface.Id)],
        Hands = work.Aggregate(Duration.Zero, (sum, part) => sum + part.Hands),
        Work = work,
        MakesDust = row.MakesDust,
        Breakable = row.Breakable,
        HotWork = row.HotWork,
        Why = row.Why,
        After = [],
        AfterEvery = Context.Rules.AfterEvery.GetValueOrDefault(row.Word, []),
    };

    private static MaskedItem Times(MaskedItem item, int count) =>
        item with { Edge = item.Edge * count, Area = item.Area * count, Plugs = item.Plugs * count };

    /// <summary>Grits of all the ways, coarse to fine.</summary>
    private static ImmutableArray<string> Grits(ImmutableArray<SettledOperation> settled) => settled.All(operation => operation.Way is not { Grits.IsEmpty: false })
        ? []
        : [.. settled.SelectMany(operation => operation.Way?.Grits ?? []).Distinct(StringComparer.Ordinal).OrderBy(grit => grit.Length).ThenBy(grit => grit, StringComparer.Ordinal)];

    /// <summary>The longest wait that follows on any of the surfaces.</summary>
    private OperationWait Longest(Presets.Operation row, ImmutableArray<SettledSurface> surfaces, ImmutableArray<SettledOperation> operations)
    {
        OperationWait? longest = null;
        string? last = null;
        for (var i = 0; i < operations.Length; i++)
        {
            var named = NamedWait(operations[i]);
            if (named is not null && named == last)
                continue;

            last = named;
            var wait = named is null ? Dwell(surfaces[i], operations[i], row) : Context.Rules.Wait(named, Context.Catalogue);
            if (longest is null || wait.Time > longest.Time)
                longest = wait;
        }

        return longest ?? OperationWait.None;
    }

    /// <summary>Id of the wait that a rule asks for, or else the way; null: none.</summary>
    private static string? NamedWait(SettledOperation operation)
    {
        foreach (var rule in operation.Reasons)
        {
            if (rule.Wait is { } asked)
                return asked;
        }

        return operation.Way?.Wait;
    }

    /// <summary>The dwell of the rate.</summary>
    private static OperationWait Dwell(SettledSurface surface, SettledOperation operation, Presets.Operation row)
    {
        var rate = HandsOn.Rate(surface, operation, row);
        return rate.DwellMinutes > 0
            ? new OperationWait(WaitKind.Dwell, Duration.FromSeconds((long)(rate.DwellMinutes * 60)), "what was put on to work", rate.Provenance.Source)
            : OperationWait.None;
    }

    /// <summary>Each after the one before; the first after the opening of the whole job.</summary>
    private ImmutableArray<Operation> Chain(IEnumerable<Operation> operations) => Chain(operations, Context.LastOpening);

    /// <summary>Each after the one before; the first after whatever its caller knows.</summary>
    private static ImmutableArray<Operation> Unopened(IEnumerable<Operation> operations) => Chain(operations, null);

    private static ImmutableArray<Operation> Chain(IEnumerable<Operation> operations, string? first)
    {
        var before = first;
        var chained = ImmutableArray.CreateBuilder<Operation>();
        foreach (var operation in operations)
        {
            chained.Add(operation with { After = before is null ? [] : [before] });
            before = operation.Id;
        }

        return chained.ToImmutable();
    }
}
