namespace CoatPlan.Prep;

/// <summary>Turns surfaces that are worked on together into their operations.</summary>
internal sealed record BatchPreparation(PrepContext Context)
{
    /// <summary>See <see cref="Sequence.ForBatch"/>.</summary>
    public ImmutableArray<Operation> Operations(ImmutableArray<string> surfaces, string batch)
    {
        var settled = Settled(surfaces);
        return Chain(Words(settled, row => !row.OncePerJob && row.Word != "remask").Select(row => Operation(row, settled, batch)));
    }

    /// <summary>See <see cref="Sequence.Remask"/>.</summary>
    public ImmutableArray<Operation> Remask(ImmutableArray<string> surfaces, string batch)
    {
        var settled = Settled(surfaces);
        return
        [
            .. Words(settled, row => row.Word == "mask").Select(row => Operation(row, settled, batch)).Select(mask => mask with
            {
                Id = $"remask/{batch}",
                Word = "remask",
                Stage = Context.Catalogue.Operation("remask").Stage,
                Order = Context.Catalogue.Operation("remask").Order,
                Title = $"Mask again: {Sentence.List(settled.Select(surface => surface.Name))}",
                Why = "The tape came off at its limit or for another colour, and goes on again before the next coat. (common practice)",
                After = [],
            }),
        ];
    }

    /// <summary>See <see cref="Sequence.Rework"/>.</summary>
    public ImmutableArray<Operation> Rework(ImmutableArray<string> surfaces, string batch)
    {
        var settled = Settled(surfaces);
        return Chain(ReworkWords.Select(word => Context.Catalogue.Operation(word)).Select(row => Reworking(row, settled, batch)));
    }

    private static ImmutableArray<string> ReworkWords { get; } = ["scuff", "blow-off", "final-wipe", "tack"];

    private Operation Reworking(Presets.Operation row, ImmutableArray<SettledSurface> settled, string batch)
    {
        var plain = new SettledOperation(row.Word, Context.Rules.Way(row.Word, ReworkWay(row.Word)), [], []);
        var work = settled.Select(surface => new SurfaceWork(surface.Id, HandsOn.OnSurface(surface, plain, [], Context.Catalogue))).ToImmutableArray();
        return Undone(row, settled, batch, work) with
        {
            Id = $"rework-{row.Word}/{batch}",
            Title = $"{plain.Way?.Title ?? row.Title}: {Sentence.List(settled.Select(surface => surface.Name))}",
            Why = "The window for the next coat closed: the film is left to dry in full, dulled and cleaned, or the next coat wrinkles it or does not hold. (common practice)",
            MakesDust = plain.Way?.Dust ?? row.MakesDust,
            Grits = plain.Way?.Grits ?? [],
            Wait = plain.Way?.Wait is { } id ? Context.Rules.Wait(id, Context.Catalogue) : OperationWait.None,
        };
    }

    private static string? ReworkWay(string word) => word switch
    {
        "scuff" => "pad",
        "blow-off" => "air",
        "final-wipe" => "cloths",
        _ => null,
    };

    private ImmutableArray<SettledSurface> Settled(ImmutableArray<string> surfaces)
    {
        if (surfaces.IsDefaultOrEmpty)
            throw new ArgumentException("A batch has at least one surface.", nameof(surfaces));
        var unknown = surfaces.FirstOrDefault(id => Context.Surfaces.All(surface => surface.Id != id));
        if (unknown is not null)
            throw new ArgumentException($"The job has no surface '{unknown}'.", nameof(surfaces));

        return [.. Context.Surfaces.Where(surface => surfaces.Contains(surface.Id, StringComparer.Ordinal))];
    }

    private IEnumerable<Presets.Operation> Words(ImmutableArray<SettledSurface> settled, Func<Presets.Operation, bool> wanted) =>
        Context.Catalogue.Operations
            .Where(row => wanted(row) && settled.Any(surface => surface.Operations.ContainsKey(row.Word)))
            .OrderBy(row => row.Stage)
            .ThenBy(row => row.Order);

    private Operation Operation(Presets.Operation row, ImmutableArray<SettledSurface> batchSurfaces, string batch)
    {
        var surfaces = batchSurfaces.Where(surface => surface.Operations.ContainsKey(row.Word)).ToImmutableArray();
        var masked = surfaces.ToDictionary(surface => surface.Id, surface => Masking.OnePiece(surface, Context.Rules.Masking, Context.Catalogue));
        var work = surfaces
            .Select(surface => new SurfaceWork(surface.Id, HandsOn.OnSurface(surface, surface.Operations[row.Word], masked[surface.Id], Context.Catalogue)))
            .ToImmutableArray();
        var ways = surfaces
            .GroupBy(surface => surface.Operations[row.Word].Way?.Title ?? row.Title, StringComparer.Ordinal)
            .ToArray();
        var settled = surfaces.Select(surface => surface.Operations[row.Word]).ToArray();

        return Undone(row, surfaces, batch, work) with
        {
            Title = $"{(ways.Length == 1 ? ways[0].Key : row.Title)}: {Sentence.List(surfaces.Select(surface => surface.Name))}",
            Notes =
            [
                .. ways.Length == 1 ? [] : ways.Select(way => $"{Sentence.List(way.Select(surface => surface.Name))}: {way.Key}"),
                .. Reasons.Notes(Reasons.ByRule(surfaces, surface => surface.Operations[row.Word].Notes, Context.Rules)),
            ],
            Why = Reasons.Why(Reasons.ByRule(surfaces, surface => surface.Operations[row.Word].Reasons, Context.Rules)),
            MakesDust = settled.Any(operation => operation.Way?.Dust ?? row.MakesDust),
            HotWork = settled.Any(operation => operation.Way?.Hot ?? row.HotWork),
            Wait = row.Word == "heat-cure" ? StagedHeat.Longest(surfaces, Context.Catalogue) : surfaces.Select(surface => Wait(surface, row)).MaxBy(wait => wait.Time)!,
            Masked = row.Word == "mask" ? [.. surfaces.SelectMany(surface => masked[surface.Id].Select(item => Times(item, surface.Measured.Count)))] : [],
            Grits = [.. settled.SelectMany(operation => operation.Way?.Grits ?? []).Distinct(StringComparer.Ordinal).OrderBy(grit => grit.Length).ThenBy(grit => grit, StringComparer.Ordinal)],
        };
    }

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

    /// <summary>What the rule or the way says; else the dwell of the rate.</summary>
    private OperationWait Wait(SettledSurface surface, Presets.Operation row)
    {
        var operation = surface.Operations[row.Word];
        if ((operation.Reasons.Select(rule => rule.Wait).OfType<string>().FirstOrDefault() ?? operation.Way?.Wait) is { } id)
            return Context.Rules.Wait(id, Context.Catalogue);

        var rate = HandsOn.Rate(surface, operation, Context.Catalogue);
        return rate.DwellMinutes > 0
            ? new OperationWait(WaitKind.Dwell, Duration.FromSeconds((long)(rate.DwellMinutes * 60)), "what was put on to work", rate.Provenance.Source)
            : OperationWait.None;
    }

    /// <summary>Each after the one before; the first after the opening of the whole job.</summary>
    private ImmutableArray<Operation> Chain(IEnumerable<Operation> operations)
    {
        var before = Context.LastOpening;
        var chained = ImmutableArray.CreateBuilder<Operation>();
        foreach (var operation in operations)
        {
            chained.Add(operation with { After = before is null ? [] : [before] });
            before = operation.Id;
        }

        return chained.ToImmutable();
    }
}
