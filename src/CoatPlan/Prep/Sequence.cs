namespace CoatPlan.Prep;

/// <summary>What a job needs done around its coats, in order and with reasons, not yet dated.</summary>
/// <remarks>
/// <see cref="Operations"/> holds each group of <see cref="Groups"/> prepared as one batch. A timetable that sprays a group in smaller batches
/// takes the operations of the whole job from <see cref="WholeJob"/> and asks <see cref="ForBatch"/> for the rest.
/// </remarks>
public sealed record Sequence
{
    private readonly BatchPreparation batches;

    internal Sequence(BatchPreparation batches) => this.batches = batches;

    /// <summary>Every operation, by stage and order, the groups one after another inside it.</summary>
    public required ImmutableArray<Operation> Operations { get; init; }

    /// <summary>What will go wrong unless the job is changed, in the order of the surfaces.</summary>
    public required ImmutableArray<Warning> Warnings { get; init; }

    /// <summary>Surfaces that can be prepared and sprayed together, in the order in which they are best begun.</summary>
    public required ImmutableArray<SurfaceGroup> Groups { get; init; }

    /// <summary>The operations that are done once, whatever the batches.</summary>
    public IEnumerable<Operation> WholeJob => Operations.Where(o => o.Scope == OperationScope.WholeJob);

    /// <summary>
    /// The operations of stages 3 to 6 and 8 and the cure and refit of stage 9 for any surfaces of the job, hands-on time counted anew.
    /// <see cref="Operation.After"/> names operations of the same batch and of the whole job; what must be done on every surface first is in
    /// <see cref="Operation.AfterEvery"/>.
    /// </summary>
    /// <param name="surfaces">Ids of the surfaces; at least one.</param>
    /// <param name="batch">Name of the batch, which ends the ids, as in <c>black-over-paint-2</c>.</param>
    /// <exception cref="ArgumentException">No surface, or an id that the job does not have.</exception>
    public ImmutableArray<Operation> ForBatch(ImmutableArray<string> surfaces, string batch) => batches.Operations(surfaces, batch);

    /// <summary>Taking the tape off and putting it on again where it would stay longer than its limit or where the next colour needs other edges.</summary>
    /// <param name="surfaces">Ids of the surfaces; at least one.</param>
    /// <param name="batch">Name of the batch, which ends the ids.</param>
    /// <exception cref="ArgumentException">No surface, or an id that the job does not have.</exception>
    public ImmutableArray<Operation> Remask(ImmutableArray<string> surfaces, string batch) => batches.Remask(surfaces, batch);

    /// <summary>What a layer wants before a layer of another product goes over it, in its window: a filler primer is sanded; empty where nothing is.</summary>
    /// <param name="surfaces">Ids of surfaces of one system; at least one.</param>
    /// <param name="batch">Name of the batch, which ends the ids.</param>
    /// <param name="layer">The layer below, from 1, not the last of the system.</param>
    /// <exception cref="ArgumentException">No surface, an id that the job does not have, or no layer above that one.</exception>
    public ImmutableArray<Operation> BetweenLayers(ImmutableArray<string> surfaces, string batch, int layer) => batches.BetweenLayers(surfaces, batch, layer);

    /// <summary>What a film wants before the next coat when its window was missed: scuffed when dry, blown off, wiped.</summary>
    /// <param name="surfaces">Ids of the surfaces; at least one.</param>
    /// <param name="batch">Name of the batch, which ends the ids.</param>
    /// <exception cref="ArgumentException">No surface, or an id that the job does not have.</exception>
    public ImmutableArray<Operation> Rework(ImmutableArray<string> surfaces, string batch) => batches.Rework(surfaces, batch);

    /// <summary>What a surface is called in sentences.</summary>
    internal string NameOf(string surface) => batches.Surface(surface).Name;

    /// <summary>What was known of the job and of each surface, by name; the job's own has none.</summary>
    internal IEnumerable<(Traits Known, string Who)> Known() =>
        batches.Context.Surfaces.Select(surface => (surface.Own, surface.Name)).Prepend((batches.Context.Job, ""));
}
