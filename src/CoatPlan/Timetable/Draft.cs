namespace CoatPlan.Timetable;

/// <summary>What is decided before anything is dated: the batches, and how each gap between coats is passed.</summary>
/// <param name="Batches">The batches in the order of the job.</param>
/// <param name="Gaps">For each batch, a choice for each gap between its coats.</param>
internal sealed record Draft(ImmutableArray<Batch> Batches, ImmutableArray<ImmutableArray<GapChoice>> Gaps)
{
    /// <summary>Every gap in its label's first window.</summary>
    public static Draft Of(ImmutableArray<Batch> batches) =>
        new(batches, [.. batches.Select(batch => Enumerable.Repeat(GapChoice.First, batch.Coats.Length - 1).ToImmutableArray())]);

    /// <summary>The same with one gap passed otherwise.</summary>
    public Draft With(int batch, int gap, GapChoice choice) => this with { Gaps = Gaps.SetItem(batch, Gaps[batch].SetItem(gap, choice)) };
}
