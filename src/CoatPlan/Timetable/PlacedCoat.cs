namespace CoatPlan.Timetable;

/// <summary>A coat that was placed in time.</summary>
/// <param name="Step">Id of its step.</param>
/// <param name="Coat">The coat.</param>
/// <param name="Station">The station of a class; null where there is one only.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends.</param>
internal sealed record PlacedCoat(string Step, CoatTask Coat, int? Station, LocalDateTime Start, LocalDateTime End)
{
    /// <summary>The coats that were placed, by start, then in the order of the work.</summary>
    /// <param name="settled">The job.</param>
    public static ImmutableArray<PlacedCoat> Of(Settled settled)
    {
        var (nodes, placed, clock) = (settled.Arranged.Drawn.Nodes, settled.Arranged.Outcome.Placed, settled.Place.Clock);
        return
        [
            .. Enumerable.Range(0, nodes.Length)
                .Where(i => nodes[i].Coat is not null && placed[i] is not null)
                .OrderBy(i => placed[i]!.Value.Start)
                .Select(i => new PlacedCoat(nodes[i].Id, nodes[i].Coat!, nodes[i].Station, clock.At(placed[i]!.Value.Start), clock.At(placed[i]!.Value.End))),
        ];
    }

    /// <summary>Whether a coat of another plan of the same job is the same, put on at the same time. Each plan makes its own batches, which are told apart by their surfaces.</summary>
    public bool IsLike(PlacedCoat other) =>
        Step == other.Step && Station == other.Station && Start == other.Start && End == other.End
        && Coat.Layer == other.Coat.Layer && Coat.Coat == other.Coat.Coat && Coat.Label.Key == other.Coat.Label.Key
        && Coat.Surfaces.AsSpan().SequenceEqual(other.Coat.Surfaces.AsSpan());
}
