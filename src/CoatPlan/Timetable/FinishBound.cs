using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>A minute before which no plan of a job finishes, whatever its batches, its order and the windows that it uses.</summary>
/// <remarks>
/// Each surface goes through all its steps in a batch of its own: in a larger one its steps take no less and its waits are no shorter. The hands are
/// counted without what batching saves or adds: to the second, and with no more packages opened for a coat than if it went on everything of its system at once.
/// </remarks>
internal static class FinishBound
{
    // The surfaces of larger jobs are looked at a share at a time: the bound of some of them is one of them all.
    private const int MostApart = 60;

    /// <summary>The bound.</summary>
    /// <param name="batches">Batches that hold every surface once at each station.</param>
    /// <param name="batching">What takes batches apart.</param>
    /// <param name="place">What networks are drawn from.</param>
    public static int Of(ImmutableArray<Batch> batches, Batching batching, Workplace place)
    {
        var surfaces = batches.SelectMany(batch => batch.Surfaces.Select(id => (Batch: batch, Surface: id))).ToArray();
        if (surfaces.Length <= MostApart)
            return OfApart([.. surfaces.Select(Alone)], batching, place);

        var most = surfaces.OrderByDescending(pair => batching.HandsOn(pair.Batch, pair.Surface).BclCompatibleTicks).Take(MostApart);
        return Math.Max(OfApart([.. most.Select(Alone)], batching, place), OfHands(batches, place));

        // Nothing holds surfaces that stay to an order of colours here: which of them follow each other depends on the batches.
        Batch Alone((Batch Batch, string Surface) pair) => batching.Alone(pair.Batch, pair.Surface) with { Stays = false };
    }

    private static int OfApart(ImmutableArray<Batch> apart, Batching batching, Workplace place)
    {
        var drawn = NetworkDrawing.Draw(apart, place);
        var load = drawn.Nodes.Select(LoadOf).ToArray();
        foreach (var station in place.Stations)
        {
            // Which surface a package is opened for is open; all come after the first work on the whole job.
            if (Enumerable.Range(0, load.Length).FirstOrDefault(index => OpensJob(drawn.Nodes[index], station), -1) is var first and >= 0)
                load[first] += Openings(drawn, station, batching);
        }

        return Scheduler.EarliestFinish(drawn.Network, [.. load]);
    }

    private static double LoadOf(WorkNode node) =>
        node.Coat is { } coat ? coat.HandsOnPieces.TotalMinutes
        : node.Batch is null ? node.Activity.Work
        : node.Operation!.Hands.TotalMinutes;

    private static bool OpensJob(WorkNode node, int? station) =>
        node.Station == station && node is { Batch: null, Operation.Stage: < Stages.Coat, Activity.Fixed: null };

    // Of one coat on everything of a system at once.
    private static double Openings(WorkNetwork drawn, int? station, Batching batching) =>
        drawn.Nodes
            .Where(node => node.Station == station && node is { Coat: not null, Activity.Fixed: null })
            .GroupBy(node => (node.Batch!.System, node.Coat!.Layer, node.Coat.Coat))
            .Sum(group => batching.Opening(group.First().Coat!, group.Sum(node => node.Coat!.Packages)).TotalMinutes);

    /// <summary>The second figure alone, which costs next to nothing.</summary>
    /// <param name="batches">Batches that hold every surface once at each station.</param>
    /// <param name="place">What networks are drawn from.</param>
    public static int OfHands(ImmutableArray<Batch> batches, Workplace place)
    {
        var wholeJob = place.Sequence.WholeJob
            .Where(operation => !place.Done.IsPast(operation) && place.Done.Of(operation.Word, operation.Surfaces, 1) is null)
            .Sum(operation => operation.Hands.TotalMinutes * operation.People);
        var undone = place.Done.IsEmpty ? batches : [];
        var minutes = place.Stations.Max(station =>
            (wholeJob + undone.Where(batch => batch.Station == station).Sum(batch => HandsOn(batch))) / place.Job.Crew.People);
        return minutes < 1 ? 0 : place.Hours.NextFit(place.Done.Release, (int)minutes, breakable: true)?.End ?? Clock.Horizon;
    }

    private static double HandsOn(Batch batch) =>
        batch.Operations.Sum(operation => operation.Hands.TotalMinutes * operation.People) + batch.Coats.Sum(coat => coat.HandsOnPieces.TotalMinutes);
}
