using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>A product of the job: its key, the class it belongs to, and what its label and data sheet say.</summary>
public sealed record JobProduct
{
    /// <summary>Its key in <c>products</c>, as written.</summary>
    public required string Key { get; init; }

    /// <summary>Class of product that fills what the label leaves out; null: none.</summary>
    public string? Preset { get; init; }

    /// <summary>What the job file says of it.</summary>
    public ProductLabel Label { get; init; } = new();

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
