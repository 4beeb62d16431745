using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>A way of putting paint on, with what is lost by it.</summary>
/// <param name="Word">aerosol, brush or spray gun.</param>
/// <param name="Kind">The same as a value.</param>
/// <param name="Loss">Share lost on a flat panel, 0 to under 1.</param>
/// <param name="LossSpread">Spread of the loss either way, as a share of all paint.</param>
/// <param name="Flow">What leaves the nozzle with the button held; null for a brush.</param>
/// <param name="ButtonShare">Share of the spraying time the button is down, over 0 to 1.</param>
/// <param name="Residue">Share of a package that stays in it.</param>
/// <param name="SetupLoss">Share of one package lost at each session, clearing the nozzle or skinning.</param>
/// <param name="FanWidth">Width of one pass; null for a brush.</param>
/// <param name="Distance">Nozzle to surface; null for a brush.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record CoatingMethod(
    string Word, ApplicationMethod Kind, Ratio Loss, Ratio LossSpread, MassFlow? Flow, double ButtonShare, Ratio Residue, Ratio SetupLoss,
    Length? FanWidth, Length? Distance, Provenance Provenance)
{
    /// <summary>Whether paint is sprayed rather than brushed.</summary>
    public bool Sprays => Kind != ApplicationMethod.Brush;
}
