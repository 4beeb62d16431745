using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>One limit of what may be breathed.</summary>
/// <param name="Share">By volume of air, so 100 ppm is 0.0001.</param>
/// <param name="Status">How well the figure is vouched for.</param>
public sealed record ExposureLimit(Ratio Share, Status Status);
