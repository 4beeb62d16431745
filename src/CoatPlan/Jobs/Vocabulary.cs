namespace CoatPlan.Jobs;

/// <summary>The words that a job file may use; a folder of presets may add to them.</summary>
/// <remarks>An empty <see cref="Solvents"/> or <see cref="Consumables"/> means that any name is taken as written.</remarks>
public sealed record Vocabulary
{
    /// <summary>The words of the contract.</summary>
    public static Vocabulary Contract { get; } = new();

    /// <summary>What a surface is made of.</summary>
    public ImmutableArray<string> Materials { get; init; } =
    [
        "steel", "cast iron", "aluminium", "cast aluminium", "stainless steel", "zinc-plated steel", "cadmium-plated steel",
        "copper alloy", "ABS", "polyolefin", "fibreglass", "rubber",
    ];

    /// <summary>Old finishes.</summary>
    public ImmutableArray<string> Finishes { get; init; } = ["bare", "factory paint", "repaint", "powder coat", "unknown"];

    /// <summary>Conditions of a surface.</summary>
    public ImmutableArray<string> Conditions { get; init; } =
    [
        "sound", "oily", "road grime", "scratches", "chips", "peeling", "chalky", "light rust", "scaly rust", "pitted",
        "white corrosion", "burnt",
    ];

    /// <summary>Kinds of things that are masked.</summary>
    public ImmutableArray<string> MaskKinds { get; init; } =
    [
        "opening", "wiring", "plastic", "rubber", "glass", "thread", "ground", "sealing face", "mating face", "friction face",
        "bolt seat", "sensor", "plate", "moving part", "fluid",
    ];

    /// <summary>Hazards of a product.</summary>
    public ImmutableArray<string> Hazards { get; init; } =
        ["flammable", "isocyanate", "chromate", "lead", "zinc", "acid", "irritant", "sensitiser"];

    /// <summary>Classes of product that fill what a label leaves out.</summary>
    public ImmutableArray<string> ProductPresets { get; init; } =
    [
        "enamel-aerosol", "lacquer-aerosol", "engine-enamel-aerosol", "high-heat-aerosol", "etch-primer-aerosol",
        "filler-primer-aerosol", "rust-primer-aerosol", "rust-converter", "moisture-cure-urethane", "epoxy-primer-2k-aerosol",
        "urethane-2k-aerosol", "zinc-rich-aerosol", "polyolefin-promoter-aerosol", "trim-coating-aerosol", "clear-aerosol",
        "underhood-black-aerosol", "aluminium-colour-aerosol", "caliper-enamel-aerosol",
    ];

    /// <summary>Operations of a plan.</summary>
    public ImmutableArray<string> Operations { get; init; } =
    [
        "photograph", "disconnect", "check-cylinders", "check-pressure", "open-hood", "cover", "degrease", "wash", "strip-down",
        "cap-ports", "degrease-again", "solvent-clean", "protect", "derust", "convert", "featheredge", "scuff", "blow-off", "mask",
        "final-wipe", "tack", "coat", "unmask", "remask", "heat-cure", "refit", "recheck", "put-away",
    ];

    /// <summary>What may be near a surface.</summary>
    public ImmutableArray<string> Near { get; init; } =
        ["brake reservoir", "fuel line", "airbag", "air-conditioning line", "hot part"];

    /// <summary>Forms of a part, which decide how much spray misses.</summary>
    public ImmutableArray<string> Forms { get; init; } = ["panel", "casting", "bracket", "tube"];

    /// <summary>Names and CAS numbers of solvents; empty: any.</summary>
    public ImmutableArray<string> Solvents { get; init; } = [];

    /// <summary>Most coats of one layer, by class of product; a class that is not there may have any number.</summary>
    public ImmutableDictionary<string, int> MostCoats { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>Names of consumables for <c>have</c>; empty: any.</summary>
    public ImmutableArray<string> Consumables { get; init; } = [];
}
