using CoatPlan.Areas;
using CoatPlan.Jobs;

namespace CoatPlan.Prep;

/// <summary>A surface with what is known of it and what is done to it.</summary>
internal sealed record SettledSurface
{
    public required MeasuredSurface Measured { get; init; }

    public required ImmutableArray<PreparedLayer> Layers { get; init; }

    public required ImmutableArray<Pairing> Pairings { get; init; }

    /// <summary>What is known of it alone.</summary>
    public required Traits Own { get; init; }

    /// <summary>What is known, its job's words among it.</summary>
    public required Traits Known { get; init; }

    /// <summary>Whether the job is one of loose pieces on the bench.</summary>
    public bool OnBench => Known.Has("work-on", "bench");

    /// <summary>What is masked on one piece.</summary>
    public required ImmutableArray<MaskedItem> Masked { get; init; }

    /// <summary>What is done, by word.</summary>
    public required IReadOnlyDictionary<string, SettledOperation> Operations { get; init; }

    public JobSurface Surface => Measured.Surface;

    public string Id => Measured.Surface.Id;

    /// <summary>What the job calls it, with its id where another has the same name.</summary>
    public required string Name { get; init; }
}
