using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>A generic product: starting values for what the label in hand does not say.</summary>
/// <remarks>All contents are the whole contents, propellant included. Source: rows of products.yaml.</remarks>
public sealed record ProductClass
{
    /// <summary>The contract's word, such as <c>underhood-black-aerosol</c>.</summary>
    public required string Word { get; init; }

    /// <summary>In a few words, for a person.</summary>
    public required string Title { get; init; }

    /// <summary>Kind of binder, such as <c>alkyd</c>; classes of one family swell and soften alike.</summary>
    public required string Family { get; init; }

    /// <summary>What it does in a system.</summary>
    public required ProductRole Role { get; init; }

    /// <summary>What it asks of rust on steel and cast iron.</summary>
    public required RustRule Rust { get; init; }

    /// <summary>Whether it bonds to tooth only: no gloss below.</summary>
    public required bool WantsTooth { get; init; }

    /// <summary>Whether spilt brake fluid softens its cured film.</summary>
    public required bool SoftenedByBrakeFluid { get; init; }

    /// <summary>Mass of the contents of one package.</summary>
    public required Mass NetMass { get; init; }

    /// <summary>Volume of the contents of one package.</summary>
    public required Volume NetVolume { get; init; }

    /// <summary>Of the whole contents.</summary>
    public required Density Density { get; init; }

    /// <summary>Share of the whole contents that is solid, by mass.</summary>
    public required Ratio SolidsByMass { get; init; }

    /// <summary>Share of the whole contents that is solid, by volume.</summary>
    public required Ratio SolidsByVolume { get; init; }

    /// <summary>Dry film of one coat.</summary>
    public required Length DryFilm { get; init; }

    /// <summary>Area one package covers in one coat on a flat panel, ordinary loss included.</summary>
    public required Area Covers { get; init; }

    /// <summary>Fewest coats of the label.</summary>
    public required int CoatsLeast { get; init; }

    /// <summary>Most coats of the label.</summary>
    public required int CoatsMost { get; init; }

    /// <summary>Coats where nothing else decides.</summary>
    public required int CoatsUsual { get; init; }

    /// <summary>Contrast ratio of one coat over black and white, over 0 to 1.</summary>
    public required double Hiding { get; init; }

    /// <summary>Whether coats are added until the old colour is hidden.</summary>
    public required bool MustHide { get; init; }

    /// <summary>L* of its film, 0 to 100; null where the colour is the user's.</summary>
    public required double? Lightness { get; init; }

    /// <summary>How it goes on.</summary>
    public required CoatingMethod Method { get; init; }

    /// <summary>Wet film, propellant gone, that a vertical face holds.</summary>
    public required Length HoldsOnVertical { get; init; }

    /// <summary>How it dries.</summary>
    public required DryingKind Drying { get; init; }

    /// <summary>Factor of the drying rate for each 10 K.</summary>
    public required double Q10 { get; init; }

    /// <summary>Air temperature at which the times hold.</summary>
    public required Temperature AtAir { get; init; }

    /// <summary>Relative humidity at which the times hold.</summary>
    public required Ratio AtHumidity { get; init; }

    /// <summary>When each stage is reached.</summary>
    public required StageTimes Times { get; init; }

    /// <summary>Times at other temperatures, coldest first; mostly empty.</summary>
    public required ImmutableArray<StageTimesAt> TimesAt { get; init; }

    /// <summary>When the next coat of itself may go on.</summary>
    public required ImmutableArray<CoatWindow> Recoat { get; init; }

    /// <summary>When another product may go over it.</summary>
    public required ImmutableArray<CoatWindow> Topcoat { get; init; }

    /// <summary>What a missed window asks.</summary>
    public required MissedRework Missed { get; init; }

    /// <summary>Pot life from activation or opening; null: none.</summary>
    public required Duration? UseWithin { get; init; }

    /// <summary>Between which conditions a coat may go on.</summary>
    public required CoatingLimits Limits { get; init; }

    /// <summary>Temperature the cured film stands for good.</summary>
    public required Temperature Heat { get; init; }

    /// <summary>Temperature the cured film stands for a short time.</summary>
    public required Temperature HeatPeak { get; init; }

    /// <summary>Staged heat that cures it, in order; empty: air-dries.</summary>
    public required ImmutableArray<CureStage> Cure { get; init; }

    /// <summary>What evaporates, largest share first.</summary>
    public required ImmutableArray<SolventContent> Solvents { get; init; }

    /// <summary>Hazard words of the contract.</summary>
    public required ImmutableArray<string> Hazards { get; init; }

    /// <summary>Field to the range usual among labels, as written.</summary>
    public required ImmutableDictionary<string, string> Ranges { get; init; }

    /// <summary>Field to how it was shifted to agree with the row's others, and from where.</summary>
    public required ImmutableDictionary<string, string> Moved { get; init; }

    /// <summary>What a person should know that no field says; may be empty.</summary>
    public required string Note { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required Provenance Provenance { get; init; }
}
