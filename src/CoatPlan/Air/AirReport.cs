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

    /// <summary>Each solvent over the whole plan, by name.</summary>
    public ImmutableArray<SolventExposure> BySolvent { get; init; } = [];

    /// <summary>What would bring each limit that is passed under, worked out by running the room again.</summary>
    public ImmutableArray<AirMend> Mends { get; init; } = [];

    /// <summary>Highest one-minute mean of all vapour that a cartridge is made for, what boils low left out, by volume of air.</summary>
    public Ratio CartridgeLoad { get; init; } = Ratio.Zero;

    /// <summary>What is in the air and boils too low for a cartridge, propellants among it, by name.</summary>
    public ImmutableArray<string> BoilsLow { get; init; } = [];

    /// <summary>Solvents in the air for which nobody has set an 8-hour limit, by name: Σ C/limit leaves them out.</summary>
    public required ImmutableArray<string> WithoutLimit { get; init; }

    /// <summary>Least exhaust at which Σ C/limit stays under 1 in every minute; zero where the leak of the room does it; null outdoors and where no coat is counted.</summary>
    public required VolumeFlow? ExhaustForLimit { get; init; }

    /// <summary>Least exhaust at which vapour stays under the share of the lower explosive limit that is worked to; null outdoors and where no coat is counted.</summary>
    public required VolumeFlow? ExhaustForLel { get; init; }

    /// <summary>The textbook's dilution figure for the heaviest coat, K·Σ G/limit; null outdoors and without vapour.</summary>
    public required VolumeFlow? DilutionForLimit { get; init; }

    /// <summary>The textbook's dilution figure for the share of the lower explosive limit that is worked to; null outdoors and without vapour.</summary>
    public VolumeFlow? DilutionForLel { get; init; }

    /// <summary>Highest one-minute mean of Σ C/limit of the whole plan.</summary>
    public double WorstMixtureRatio => ByStep.IsEmpty ? 0 : ByStep.Max(step => step.MixtureRatio);

    /// <summary>Highest one-minute mean of Σ C/LEL of the whole plan.</summary>
    public double WorstLelRatio => ByStep.IsEmpty ? 0 : ByStep.Max(step => step.LelRatio);
}
