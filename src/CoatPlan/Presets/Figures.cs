using System.Collections.Frozen;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Single figures of the trade by name.</summary>
/// <param name="All">Rows by name.</param>
public sealed record Figures(ImmutableSortedDictionary<string, Figure> All)
{
    // Asked thousands of times a plan.
    private readonly FrozenDictionary<string, Figure> byName = All.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The row of a name, with its source.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name.</exception>
    public Figure Row(string name) =>
        byName.TryGetValue(name, out var figure) ? figure : throw new ArgumentException($"no figure is named '{name}'", nameof(name));

    /// <summary>A plain number.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public double Number(string name) => Row(name).Number ?? throw OtherKind(name);

    /// <summary>A share.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public Ratio Share(string name) => Row(name).Share ?? throw OtherKind(name);

    /// <summary>A length of time.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public Duration Time(string name) => Row(name).Time ?? throw OtherKind(name);

    /// <summary>A temperature.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public Temperature Temperature(string name) => Row(name).Temperature ?? throw OtherKind(name);

    /// <summary>A difference of temperatures.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public TemperatureDelta Difference(string name) => Row(name).Difference ?? throw OtherKind(name);

    /// <summary>A length.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public Length Length(string name) => Row(name).Length ?? throw OtherKind(name);

    /// <summary>An area.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public Area Area(string name) => Row(name).Area ?? throw OtherKind(name);

    /// <summary>A pressure.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public Pressure Pressure(string name) => Row(name).Pressure ?? throw OtherKind(name);

    /// <summary>A speed.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public Speed Speed(string name) => Row(name).Speed ?? throw OtherKind(name);

    /// <summary>A time of day.</summary>
    /// <param name="name">A name in figures.yaml.</param>
    /// <exception cref="ArgumentException">No row has the name, or it is of another kind.</exception>
    public LocalTime Clock(string name) => Row(name).Clock ?? throw OtherKind(name);

    private static ArgumentException OtherKind(string name) => new($"figure '{name}' is of another kind", nameof(name));
}
