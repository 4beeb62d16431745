using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>Something that has been done already: an operation, or a coat.</summary>
public sealed record DoneEntry
{
    /// <summary>Ids of the surfaces; empty: an operation of the whole job.</summary>
    public ImmutableArray<string> Surfaces { get; init; } = [];

    /// <summary>Word of the operation; null for a coat given by layer and coat.</summary>
    public string? Operation { get; init; }

    /// <summary>Layer of the system, from 1; null for an operation.</summary>
    public int? Layer { get; init; }

    /// <summary>Coat of the layer, from 1; 0: the mist coat; null for an operation.</summary>
    public int? Coat { get; init; }

    /// <summary>When it ended; null: not said, no later than <c>as-of</c>.</summary>
    public LocalDateTime? At { get; init; }

    /// <summary>Hands-on time it took; null: not said.</summary>
    public Duration? Took { get; init; }

    /// <summary>What it used of its cans: a count used, or the mass or volume left; null: not said.</summary>
    public Amount? Cans { get; init; }

    /// <summary>What was read at the time; null: nothing.</summary>
    public DoneReadings? Readings { get; init; }

    /// <summary>Free text; null: none.</summary>
    public string? Note { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
