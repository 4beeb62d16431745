using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>A single figure of the trade that belongs to no table; exactly one of the kinds is set.</summary>
public sealed record Figure
{
    /// <summary>Key of the row, such as <c>wind-limit</c>.</summary>
    public required string Name { get; init; }

    /// <summary>A plain number or count.</summary>
    public double? Number { get; init; }

    /// <summary>A share.</summary>
    public Ratio? Share { get; init; }

    /// <summary>A length of time.</summary>
    public Duration? Time { get; init; }

    /// <summary>A temperature.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>A difference of temperatures.</summary>
    public TemperatureDelta? Difference { get; init; }

    /// <summary>A length.</summary>
    public Length? Length { get; init; }

    /// <summary>An area.</summary>
    public Area? Area { get; init; }

    /// <summary>A pressure.</summary>
    public Pressure? Pressure { get; init; }

    /// <summary>A speed.</summary>
    public Speed? Speed { get; init; }

    /// <summary>A time of day.</summary>
    public LocalTime? Clock { get; init; }

    /// <summary>What it is, in words.</summary>
    public required string Means { get; init; }

    /// <summary>Usual range, as written; may be empty.</summary>
    public required string Range { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required Provenance Provenance { get; init; }
}
