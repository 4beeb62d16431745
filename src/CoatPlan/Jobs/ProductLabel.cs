using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>What a label and data sheet say of a product; null or empty: not said.</summary>
public sealed record ProductLabel
{
    /// <summary>What it is called.</summary>
    public string? Name { get; init; }

    /// <summary>What is bought.</summary>
    public Package? Package { get; init; }

    /// <summary>Area that one package covers in one coat on a flat panel, ordinary loss included.</summary>
    public Area? Covers { get; init; }

    /// <summary>Solids by volume of the whole contents, 0 to 1.</summary>
    public Ratio? Solids { get; init; }

    /// <summary>Density of the whole contents.</summary>
    public Density? Density { get; init; }

    /// <summary>Dry film of one coat.</summary>
    public Length? DryFilm { get; init; }

    /// <summary>How well one coat hides.</summary>
    public Hiding? Hiding { get; init; }

    /// <summary>How light the dry film is.</summary>
    public Lightness? Lightness { get; init; }

    /// <summary>Range of coats that the label allows.</summary>
    public CoatRange? Coats { get; init; }

    /// <summary>How it is put on.</summary>
    public ApplicationMethod? Method { get; init; }

    /// <summary>Share lost on a flat panel, 0 to less than 1.</summary>
    public Ratio? Loss { get; init; }

    /// <summary>How it dries.</summary>
    public DryingKind? Drying { get; init; }

    /// <summary>Air at which the times hold; null: 70 °F and 50 % by the contract.</summary>
    public LabelAir? At { get; init; }

    /// <summary>Drying times.</summary>
    public LabelTimes? Times { get; init; }

    /// <summary>The label's own table of times by air temperature, as written.</summary>
    public ImmutableArray<LabelTimesAt> TimesAt { get; init; } = [];

    /// <summary>Windows for the next coat of the same product, either of which may be used; empty: not said.</summary>
    public ImmutableArray<RecoatWindow> Recoat { get; init; } = [];

    /// <summary>Windows for another product over it; empty: as <see cref="Recoat"/>.</summary>
    public ImmutableArray<RecoatWindow> Topcoat { get; init; } = [];

    /// <summary>What a missed window asks; null: scuff.</summary>
    public MissedRework? Missed { get; init; }

    /// <summary>Pot life from activation.</summary>
    public Duration? UseWithin { get; init; }

    /// <summary>Limits of air, surface and humidity.</summary>
    public LabelLimits? Limits { get; init; }

    /// <summary>Temperature that the cured film stands for good.</summary>
    public Temperature? Heat { get; init; }

    /// <summary>Temperature that the cured film stands for a short time.</summary>
    public Temperature? HeatPeak { get; init; }

    /// <summary>Staged heat, in order.</summary>
    public ImmutableArray<CureStage> Cure { get; init; } = [];

    /// <summary>Solvents by share of mass of the whole contents.</summary>
    public ImmutableArray<SolventShare> Solvents { get; init; } = [];

    /// <summary>Words of hazard, in the contract's spelling.</summary>
    public ImmutableArray<string> Hazards { get; init; } = [];

    /// <summary>Sentences of the label, as the person wrote them.</summary>
    public ImmutableArray<string> LabelSays { get; init; } = [];
}
