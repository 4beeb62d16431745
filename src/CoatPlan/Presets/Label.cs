using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>A job's product with everything a plan needs: the job's words over its class, over the contract's defaults.</summary>
public sealed record Label
{
    private const int UnsaidCoats = 2;

    /// <summary>The key in the job's products.</summary>
    public required string Key { get; init; }

    /// <summary>Word of the product class; null for a product described by the job alone.</summary>
    public required string? Preset { get; init; }

    /// <summary>What a person calls it.</summary>
    public required string Name { get; init; }

    /// <summary>How it goes on, with the method's own loss and flow.</summary>
    public required CoatingMethod Method { get; init; }

    /// <summary>How it dries.</summary>
    public required DryingKind Drying { get; init; }

    /// <summary>Mass in one package; null where neither said nor derivable.</summary>
    public required Mass? NetMass { get; init; }

    /// <summary>Volume in one package; null where neither said nor derivable.</summary>
    public required Volume? NetVolume { get; init; }

    /// <summary>Price of one package, in the job's currency; null: unknown.</summary>
    public required decimal? Price { get; init; }

    /// <summary>Packages that are sold together, 1 or more.</summary>
    public required int Pack { get; init; }

    /// <summary>Area one package covers in one coat on a flat panel, ordinary loss included; null: by solids only.</summary>
    public required Area? Covers { get; init; }

    /// <summary>Share of the whole contents that is solid, by volume; null: by coverage only.</summary>
    public required Ratio? SolidsByVolume { get; init; }

    /// <summary>Of the whole contents; null where unknown.</summary>
    public required Density? Density { get; init; }

    /// <summary>Dry film of one coat; null where unknown.</summary>
    public required Length? DryFilm { get; init; }

    /// <summary>
    /// Factor by which it dries slower than the times of its class, 1 or more: a job that puts on a thicker film than its class, and says no times of its
    /// own, waits longer.
    /// </summary>
    public double ThickFilmFactor { get; init; } = 1;

    /// <summary>Wet film, propellant gone, that a vertical face holds; null where unknown.</summary>
    public required Length? HoldsOnVertical { get; init; }

    /// <summary>Contrast ratio of one coat over black and white, over 0 to 1.</summary>
    public required double Hiding { get; init; }

    /// <summary>Coats that hid black and white on a test panel; null: none was sprayed, and <see cref="Hiding"/> counts.</summary>
    public int? HidesAfter { get; init; }

    /// <summary>Whether <see cref="Covers"/> was measured on a test panel: then it alone counts, whatever solids and film would give.</summary>
    public bool CoversMeasured => Origins.GetValueOrDefault("covers", Origin.Default) == Origin.Panel;

    /// <summary>Whether coats are added until the old colour is hidden.</summary>
    public required bool MustHide { get; init; }

    /// <summary>L* of its film, 0 to 100; null where unknown.</summary>
    public required double? Lightness { get; init; }

    /// <summary>Fewest coats of the label.</summary>
    public required int CoatsLeast { get; init; }

    /// <summary>Most coats of the label.</summary>
    public required int CoatsMost { get; init; }

    /// <summary>Coats of a system that names none: the label's least, or 2 where it says nothing. Source: the job file's contract.</summary>
    public int CoatsUsual => Origins.GetValueOrDefault("coats", Origin.Default) == Origin.Default ? UnsaidCoats : CoatsLeast;

    /// <summary>Share lost on a flat panel, 0 to under 1.</summary>
    public required Ratio Loss { get; init; }

    /// <summary>Air temperature at which the times hold.</summary>
    public required Temperature AtAir { get; init; }

    /// <summary>Relative humidity at which the times hold.</summary>
    public required Ratio AtHumidity { get; init; }

    /// <summary>When each stage is reached.</summary>
    public required StageTimes Times { get; init; }

    /// <summary>The label's own table, coldest first; empty: none.</summary>
    public required ImmutableArray<StageTimesAt> TimesAt { get; init; }

    /// <summary>When the next coat of itself may go on; at least one window.</summary>
    public required ImmutableArray<CoatWindow> Recoat { get; init; }

    /// <summary>When another product may go over it; at least one window.</summary>
    public required ImmutableArray<CoatWindow> Topcoat { get; init; }

    /// <summary>What a missed window asks.</summary>
    public required MissedRework Missed { get; init; }

    /// <summary>Pot life from activation; null: none.</summary>
    public required Duration? UseWithin { get; init; }

    /// <summary>Between which conditions a coat may go on.</summary>
    public required CoatingLimits Limits { get; init; }

    /// <summary>Temperature the cured film stands for good; null where unknown.</summary>
    public required Temperature? Heat { get; init; }

    /// <summary>Temperature the cured film stands for a short time; null where unknown.</summary>
    public required Temperature? HeatPeak { get; init; }

    /// <summary>Staged heat that cures it, in order; empty: air-dries.</summary>
    public required ImmutableArray<CureStage> Cure { get; init; }

    /// <summary>What evaporates; empty where unknown.</summary>
    public required ImmutableArray<SolventContent> Solvents { get; init; }

    /// <summary>Hazard words of the contract.</summary>
    public required ImmutableArray<string> Hazards { get; init; }

    /// <summary>What the label says, as the job quotes it.</summary>
    public required ImmutableArray<string> LabelSays { get; init; }

    /// <summary>Factor of the drying rate for each 10 K.</summary>
    public required double Q10 { get; init; }

    /// <summary>Kind of binder; empty for a product without a preset.</summary>
    public required string Family { get; init; }

    /// <summary>What it does in a system; null for a product without a preset.</summary>
    public required ProductRole? Role { get; init; }

    /// <summary>What it asks of rust; null for a product without a preset.</summary>
    public required RustRule? Rust { get; init; }

    /// <summary>Whether it bonds to tooth only: no gloss below.</summary>
    public required bool WantsTooth { get; init; }

    /// <summary>Whether spilt brake fluid softens its cured film.</summary>
    public required bool SoftenedByBrakeFluid { get; init; }

    /// <summary>Field of the contract, such as <c>covers</c>, to who said it.</summary>
    public required ImmutableSortedDictionary<string, Origin> Origins { get; init; }
}
