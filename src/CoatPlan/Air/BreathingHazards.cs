using CoatPlan.Presets;
using UnitsNet;

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

    /// <summary>Highest relative humidity while something is sprayed, 0 to 1; half where nobody says.</summary>
    public Ratio Humidity { get; init; } = Ratio.FromPercent(50);

    /// <summary>Whether what is sanded may hold lead or chromate.</summary>
    public required bool MayHoldLead { get; init; }
}
