using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>What figures of preset rows may be; messages and the reference read it here.</summary>
internal static class PresetBounds
{
    /// <summary>A factor that only makes more: 1 or more.</summary>
    public static readonly Bounds Factor = new(1, 100);

    /// <summary>A lightness, L*.</summary>
    public static readonly Bounds Lightness = new(0, 100);

    /// <summary>A share written as a bare number.</summary>
    public static readonly Bounds Share = new(0, 1);

    /// <summary>A share that is more than nothing.</summary>
    public static readonly Bounds SomeShare = new(0, 1, "", LeastIsOut: true);

    /// <summary>A share in percent.</summary>
    public static readonly Bounds Percent = new(0, 100, "%");

    /// <summary>A loss: less than everything.</summary>
    public static readonly Bounds Loss = new(0, 99, "%");

    /// <summary>A density of a solid or liquid.</summary>
    public static readonly Bounds Density = new(1, 25_000, "kg/m3");

    /// <summary>A specific heat.</summary>
    public static readonly Bounds SpecificHeat = new(0, 10_000, "J/kgK", LeastIsOut: true);

    /// <summary>A thermal conductivity.</summary>
    public static readonly Bounds Conductivity = new(0, 1_000, "W/mK", LeastIsOut: true);

    /// <summary>A film coefficient of heat exchange.</summary>
    public static readonly Bounds FilmCoefficient = new(0, 1_000, "W/m2K", LeastIsOut: true);

    /// <summary>A length of any figure.</summary>
    public static readonly Bounds Length = new(0, 1_000, "m", LeastIsOut: true);

    /// <summary>An area.</summary>
    public static readonly Bounds Area = new(0, 10_000, "m2", LeastIsOut: true);

    /// <summary>A duration that is more than nothing.</summary>
    public static readonly Bounds Time = new(0, 525_600, "min", LeastIsOut: true);

    /// <summary>Minutes of work or dwell, none allowed.</summary>
    public static readonly Bounds Minutes = new(0, 10_000, "min");

    /// <summary>A temperature of air, metal or film.</summary>
    public static readonly Bounds Temperature = new(-100, 1_500, "°C");

    /// <summary>A difference of temperatures.</summary>
    public static readonly Bounds Difference = new(0, 100, "K");

    /// <summary>A molar mass.</summary>
    public static readonly Bounds MolarMass = new(1, 1_000, "g/mol");

    /// <summary>A concentration limit in air.</summary>
    public static readonly Bounds Ppm = new(0, 1_000_000, "ppm", LeastIsOut: true);

    /// <summary>A concentration limit in air, by mass.</summary>
    public static readonly Bounds MilligramsPerCubicMetre = new(0, 1_000_000, "mg/m3", LeastIsOut: true);

    /// <summary>A flow of paint from a nozzle.</summary>
    public static readonly Bounds Flow = new(0, 100, "g/s", LeastIsOut: true);

    /// <summary>The contents of one package, by mass.</summary>
    public static readonly Bounds NetMass = new(0, 1_000, "kg", LeastIsOut: true);

    /// <summary>The contents of one package, by volume.</summary>
    public static readonly Bounds NetVolume = new(0, 1_000, "L", LeastIsOut: true);

    /// <summary>A factor of the drying rate for each 10 K.</summary>
    public static readonly Bounds Q10 = new(1, 10);

    /// <summary>A pressure.</summary>
    public static readonly Bounds Pressure = new(0, 10_000, "psi", LeastIsOut: true);

    /// <summary>A speed.</summary>
    public static readonly Bounds Speed = new(0, 500, "mph", LeastIsOut: true);

    /// <summary>Grams of ozone for a gram of vapour.</summary>
    public static readonly Bounds Reactivity = new(0, 100);

    /// <summary>A price of one pack.</summary>
    public static readonly Bounds Price = new(0, 1_000_000_000);

    /// <summary>Any number.</summary>
    public static readonly Bounds Number = new(-1_000_000, 1_000_000);

    /// <summary>An amount of a consumable for each of what it is counted by.</summary>
    public static readonly Bounds Amount = new(0, 1_000, "", LeastIsOut: true);

    /// <summary>The most coats a label may name.</summary>
    public const int Coats = 20;
}
