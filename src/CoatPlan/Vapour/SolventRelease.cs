using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Vapour;

/// <summary>What one coat gives off of one solvent.</summary>
/// <param name="Solvent">The solvent.</param>
/// <param name="AtOnce">What is in the air as soon as it is sprayed, at least 0.</param>
/// <param name="FromFilm">What leaves the wet film afterwards, at least 0.</param>
public sealed record SolventRelease(Solvent Solvent, Mass AtOnce, Mass FromFilm)
{
    /// <summary>All that is given off.</summary>
    public Mass Total => AtOnce + FromFilm;
}
