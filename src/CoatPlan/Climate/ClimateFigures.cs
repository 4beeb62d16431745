using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Climate;

/// <summary>The trade's figures that decide when weather permits work and how long things stay wet.</summary>
public sealed record ClimateFigures
{
    /// <summary>Outdoors, wind over which nothing is sprayed.</summary>
    public required Speed WindLimit { get; init; }

    /// <summary>Outdoors, time of day from which no film may be wet.</summary>
    public required LocalTime NightFrom { get; init; }

    /// <summary>Outdoors, time of day until which no film may be wet.</summary>
    public required LocalTime NightUntil { get; init; }

    /// <summary>Power with which the time of drying grows with the film, 1 or more.</summary>
    public required double ThickFilmPower { get; init; }

    /// <summary>How long the solvent of a wipe needs to leave, at the air at which labels hold.</summary>
    public required Duration WipeFlash { get; init; }

    /// <summary>Factor by which the solvent of a wipe leaves faster for each 10 K.</summary>
    public required double WipeQ10 { get; init; }

    /// <summary>The figures of a catalogue.</summary>
    /// <param name="catalogue">The presets.</param>
    /// <exception cref="ArgumentException">A figure is missing or of another kind.</exception>
    public static ClimateFigures Of(Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        var figures = catalogue.Figures;
        return new ClimateFigures
        {
            WindLimit = figures.Speed("wind-limit"),
            NightFrom = figures.Clock("no-spray-from"),
            NightUntil = figures.Clock("no-spray-until"),
            ThickFilmPower = figures.Number("thick-film-power"),
            WipeFlash = figures.Time("wipe-flash"),
            WipeQ10 = figures.Number("wipe-q10"),
        };
    }
}
