namespace CoatPlan.Presets;

/// <summary>The shape of a part as the sprayer and the sander meet it.</summary>
/// <param name="Word">panel, casting, bracket or tube.</param>
/// <param name="ShareLanding">Share of an aerosol that lands on it, 0 to 1.</param>
/// <param name="PaintFactor">Paint needed against a flat panel, 1 or more: the panel's share over its own.</param>
/// <param name="TimeFactor">Hands-on time against a flat panel, 1 or more.</param>
/// <param name="Relief">Least true over outline area, 1 or more.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record PartForm(
    string Word, double ShareLanding, double PaintFactor, double TimeFactor, double Relief, Provenance Provenance);
