using CoatPlan.Presets;

namespace CoatPlan.Air;

/// <summary>What a job puts into the air besides its vapour.</summary>
public sealed record BreathingHazards
{
    /// <summary>The products that are put on.</summary>
    public required ImmutableArray<Label> Products { get; init; }

    /// <summary>Whether anything is sprayed, not brushed.</summary>
    public required bool Sprays { get; init; }

    /// <summary>Whether anything is sanded or brushed dry.</summary>
    public required bool MakesDust { get; init; }

    /// <summary>Whether what is sanded may hold lead or chromate.</summary>
    public required bool MayHoldLead { get; init; }
}
