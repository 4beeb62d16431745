namespace CoatPlan.Prep;

/// <summary>The operations that are done once, before the first surface is touched and after the last.</summary>
internal static class WholeJobPreparation
{
    private const int LastOpeningStage = 2;

    /// <summary>
    /// Those of stages 1 and 2, each after the one before; and those of stages 9 and 10, likewise, of which <see cref="Operation.AfterEvery"/> tells what else
    /// they come after.
    /// </summary>
    public static (ImmutableArray<Operation> Opening, ImmutableArray<Operation> Closing) Of(PrepContext context)
    {
        var once = Once(context).ToArray();
        return (Chain(once.Where(operation => operation.Stage <= LastOpeningStage)), Chain(once.Where(operation => operation.Stage > LastOpeningStage)));
    }

    private static IEnumerable<Operation> Once(PrepContext context)
    {
        var known = Traits.All(context.Surfaces.Select(surface => surface.Known).Prepend(context.Job));
        var surfaces = new NamedSurfaces(context.Surfaces);
        var (settled, _) = Settling.Settle(known, context.Rules, context.Catalogue);
        return context.Catalogue.Operations
            .Where(row => row.OncePerJob && settled.ContainsKey(row.Word))
            .OrderBy(row => row.Stage)
            .ThenBy(row => row.Order)
            .Select(row => Operation(row, settled[row.Word], surfaces, context));
    }

    private static Operation Operation(Presets.Operation row, SettledOperation settled, NamedSurfaces surfaces, PrepContext context) => new()
    {
        Id = row.Word,
        Word = row.Word,
        Stage = row.Stage,
        Order = row.Order,
        Title = row.Title,
        Notes = Reasons.Notes(settled.Notes.Select(rule => (rule, Holding(rule, surfaces)))),
        Scope = OperationScope.WholeJob,
        Surfaces = [],
        Hands = HandsOn.OnJob(row.Word, context.Surfaces, context.Catalogue),
        MakesDust = row.MakesDust,
        Breakable = row.Breakable,
        HotWork = row.HotWork,
        Why = Reasons.Why(settled.Reasons.Select(rule => (rule, Holding(rule, surfaces)))),
        After = [],
        AfterEvery = context.Rules.AfterEvery.GetValueOrDefault(row.Word, []),
        Wait = settled.Reasons.Select(rule => rule.Wait).OfType<string>().Select(id => context.Rules.Wait(id, context.Catalogue)).FirstOrDefault(OperationWait.None),
    };

    private static NamedSurfaces Holding(PrepRule rule, NamedSurfaces surfaces) =>
        surfaces.Only([.. surfaces.All.Where(surface => rule.Condition.Holds(surface.Known))]);

    private static ImmutableArray<Operation> Chain(IEnumerable<Operation> operations)
    {
        var all = operations.ToArray();
        return [.. all.Select((operation, at) => at == 0 ? operation : operation with { After = [all[at - 1].Id] })];
    }
}
