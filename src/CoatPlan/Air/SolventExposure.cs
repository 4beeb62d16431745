using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>One solvent over the whole plan, by volume of air, in the well-mixed room.</summary>
/// <param name="Solvent">The solvent.</param>
/// <param name="Peak">Highest one-minute mean.</param>
/// <param name="ShortTerm">Highest mean over 15 min.</param>
/// <param name="Shift">Highest mean over 8 h. Source: 29 CFR 1910.1000(d)(1)(i).</param>
public sealed record SolventExposure(Solvent Solvent, Ratio Peak, Ratio ShortTerm, Ratio Shift)
{
    /// <summary>Highest share that a respirator may be worn in: its factor times the 8-hour limit, never above what is immediately dangerous.</summary>
    /// <remarks>Null where the solvent has no 8-hour limit. Source: 29 CFR 1910.134(d)(3)(i)(B).</remarks>
    /// <param name="factor">Assigned protection factor, 1 or more.</param>
    public Ratio? MaximumUse(int factor) => Solvent.LowestLongTerm is { } limit ? Ratios.MaximumUse(factor, limit.Share, Solvent.Idlh?.Share) : null;
}
