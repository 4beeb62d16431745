using CoatPlan.Presets;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Tests.Vapour;

/// <summary>Solvents and figures that say only what a test is about.</summary>
internal static class VapourSamples
{
    private static readonly Provenance Invented = new("made up for a test", Status.Estimate);

    public static Figures Figures { get; } = new(new[]
    {
        Row("released-at-once") with { Share = Ratio.FromPercent(60) },
        Row("film-left-at-touch") with { Share = Ratio.FromPercent(5) },
        Row("air-leak-per-hour") with { Number = 0.5 },
        Row("lel-share-work") with { Share = Ratio.FromPercent(10) },
        Row("covers-spread") with { Share = Ratio.FromPercent(15) },
        Row("session-gap") with { Time = Duration.FromHours(1) },
        Row("hide-contrast") with { Number = 0.98 },
        Row("hide-lightness") with { Number = 1 },
        Row("cartridge-low-boiling") with { Temperature = Temperature.FromDegreesCelsius(65) },
        Row("overlap") with { Share = Ratio.FromPercent(50) },
    }.ToImmutableSortedDictionary(row => row.Name, row => row));

    public static Solvent Solvent(string name = "thinner", double molarMass = 100, double? limitPpm = 100, double? lelPercent = 1, bool propellant = false) => new()
    {
        Name = name,
        Cas = "",
        Aliases = [],
        MolarMass = MolarMass.FromGramsPerMole(molarMass),
        Density = Density.FromKilogramsPerLiter(0.8),
        Boiling = Temperature.FromDegreesCelsius(propellant ? -40 : 110),
        Propellant = propellant,
        Voc = true,
        LowerExplosiveLimit = Limit(lelPercent * 1e4),
        LowerExplosiveLimitSource = "",
        Legal = Limit(limitPpm),
        Recommended = null,
        ShortTerm = null,
        Ceiling = null,
        Idlh = null,
        Ozone = null,
        Note = "",
        Provenance = Invented,
    };

    public static ExposureLimit? Limit(double? ppm) => ppm is { } known ? new ExposureLimit(Ratio.FromPartsPerMillion(known), Status.Estimate) : null;

    public static CoatRelease Release(Solvent solvent, double atOnceGrams, double filmGrams, double filmMinutes = 10) =>
        new([new SolventRelease(solvent, Mass.FromGrams(atOnceGrams), Mass.FromGrams(filmGrams))], Duration.FromMinutes(filmMinutes));

    private static Figure Row(string name) => new() { Name = name, Means = "", Range = "", Provenance = Invented };
}
