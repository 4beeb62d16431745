namespace CoatPlan.Presets;

/// <summary>What is wrong with a surface before the work.</summary>
public sealed record Condition
{
    /// <summary>The contract's word, such as <c>scaly rust</c>.</summary>
    public required string Word { get; init; }

    /// <summary>In a few words, for a person.</summary>
    public required string Title { get; init; }

    /// <summary>Share of the surface bare after its prep, 0 to 1.</summary>
    public required double BareShare { get; init; }

    /// <summary>Metres of chip or break edge to feather, per m² of surface; 0 where there is none.</summary>
    public required double ChipEdgePerSquareMetre { get; init; }

    /// <summary>Oil or film that must be off before any abrasive.</summary>
    public required bool Greasy { get; init; }

    /// <summary>Red rust that a converter works on.</summary>
    public required bool Rust { get; init; }

    /// <summary>Scale or pits that call for wire or abrasive down to bright or tight metal.</summary>
    public required bool Scale { get; init; }

    /// <summary>Pits that keep rust after brushing: a converter is worth its time.</summary>
    public required bool Pits { get; init; }

    /// <summary>White corrosion of aluminium or zinc.</summary>
    public required bool WhiteCorrosion { get; init; }

    /// <summary>An old film that does not hold and comes off first.</summary>
    public required bool LooseFilm { get; init; }

    /// <summary>Operation words that it asks for beyond a sound surface's, in no order.</summary>
    public required ImmutableArray<string> Asks { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required Provenance Provenance { get; init; }
}
