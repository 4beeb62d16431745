using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Climate;

/// <summary>How late a piece follows the air.</summary>
/// <remarks>
/// τ = ρ·c·t/h with the heat of the whole thickness t leaving through one face, or half of it through each of two. A fender of 0.8 mm steel:
/// 3 min on the bench, 6 min on the vehicle. A casting of 6 mm iron: 23 and 47 min. Source: lumped capacity, textbook; h of ISO 6946.
/// </remarks>
public static class MetalLag
{
    /// <summary>The time constant of a surface's pieces: air at one face where they stay on the vehicle, at both where they are removed.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="catalogue">The presets.</param>
    /// <param name="outdoors">Whether the work is done outdoors, where the air moves.</param>
    /// <exception cref="ArgumentException">No preset has the surface's material.</exception>
    public static Duration Of(JobSurface surface, Catalogue catalogue, bool outdoors)
    {
        ArgumentNullException.ThrowIfNull(surface);
        ArgumentNullException.ThrowIfNull(catalogue);
        var material = catalogue.Material(surface.Material);
        return Of(
            material.Density, material.SpecificHeat, surface.Gauge ?? material.Gauge, surface.Stays ? 1 : 2,
            outdoors ? catalogue.Film.Outdoors : catalogue.Film.Indoors);
    }

    /// <summary>The time constant of a sheet.</summary>
    /// <param name="density">Density, more than 0.</param>
    /// <param name="specificHeat">Specific heat, more than 0.</param>
    /// <param name="gauge">Thickness, more than 0.</param>
    /// <param name="faces">Faces in the air, 1 or 2.</param>
    /// <param name="coefficient">Heat passed from the air to a face, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static Duration Of(Density density, SpecificEntropy specificHeat, Length gauge, int faces, HeatTransferCoefficient coefficient)
    {
        if (faces is not (1 or 2))
        {
            throw new ArgumentOutOfRangeException(nameof(faces), faces, "A sheet has air at 1 or 2 of its faces.");
        }

        var seconds = Positive(density.KilogramsPerCubicMeter, nameof(density))
            * Positive(specificHeat.JoulesPerKilogramKelvin, nameof(specificHeat))
            * Positive(gauge.Meters, nameof(gauge))
            / (faces * Positive(coefficient.WattsPerSquareMeterKelvin, nameof(coefficient)));
        return Duration.FromSeconds(seconds);
    }

    private static double Positive(double value, string name) => value > 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "Must be more than 0 and finite.");
}
