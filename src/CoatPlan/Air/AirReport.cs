using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>What the air of the work place holds over a dated plan.</summary>
public sealed record AirReport
{
    /// <summary>The room that was counted with; null outdoors, where nothing gathers.</summary>
    public required WorkRoom? Room { get; init; }

    /// <summary>Each step that gives off vapour, in the order of their starts.</summary>
    public required ImmutableArray<StepAir> ByStep { get; init; }

    /// <summary>Worst 8-hour average of Σ C/limit. Source: 29 CFR 1910.1000(d).</summary>
    public required double TwaMixtureRatio { get; init; }

    /// <summary>Highest one-minute mean of Σ C/limit over propellant gases alone, which no cartridge holds.</summary>
    public required double PropellantRatio { get; init; }

    /// <summary>Limits for minutes that are passed, by solvent.</summary>
    public required ImmutableArray<ShortLimitPassed> ShortLimitsPassed { get; init; }

    /// <summary>Solvents in the air for which nobody has set an 8-hour limit, by name: Σ C/limit leaves them out.</summary>
    public required ImmutableArray<string> WithoutLimit { get; init; }

    /// <summary>Least exhaust at which Σ C/limit stays under 1 in every minute; zero where the leak of the room does it; null outdoors.</summary>
    public required VolumeFlow? ExhaustForLimit { get; init; }

    /// <summary>Least exhaust at which vapour stays under the share of the lower explosive limit that is worked to; null outdoors.</summary>
    public required VolumeFlow? ExhaustForLel { get; init; }

    /// <summary>The textbook's dilution figure for the heaviest coat, K·Σ G/limit; null outdoors and without vapour.</summary>
    public required VolumeFlow? DilutionForLimit { get; init; }

    /// <summary>Highest one-minute mean of Σ C/limit of the whole plan.</summary>
    public double WorstMixtureRatio => ByStep.IsEmpty ? 0 : ByStep.Max(step => step.MixtureRatio);

    /// <summary>Highest one-minute mean of Σ C/LEL of the whole plan.</summary>
    public double WorstLelRatio => ByStep.IsEmpty ? 0 : ByStep.Max(step => step.LelRatio);
}
