using CoatPlan.Presets;
using CoatPlan.Quantities;

namespace CoatPlan.Prep;

/// <summary>What every batch is prepared from.</summary>
internal sealed record PrepContext
{
    public required PrepRules Rules { get; init; }

    public required Catalogue Catalogue { get; init; }

    public required Traits Job { get; init; }

    /// <summary>Writes quantities in the units of the job.</summary>
    public required QuantityFormat Format { get; init; }

    /// <summary>In the order of the job.</summary>
    public required ImmutableArray<SettledSurface> Surfaces { get; init; }

    /// <summary>Id of the last operation of the whole job before the first of a batch; null: none.</summary>
    public string? LastOpening { get; init; }
}
