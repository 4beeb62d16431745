using UnitsNet;

namespace CoatPlan.Areas;

/// <summary>An area that is known only so well.</summary>
/// <param name="Low">The least it is taken to be, m², more than zero.</param>
/// <param name="Likely">The likely area, m², between the other two.</param>
/// <param name="High">The most it is taken to be, m².</param>
public sealed record AreaRange(Area Low, Area Likely, Area High)
{
    /// <summary>A likely area with the same share either way.</summary>
    /// <param name="likely">More than zero.</param>
    /// <param name="spread">Share either way, from 0 up to but not 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An area that is not more than zero, or a spread outside its range.</exception>
    public static AreaRange Around(Area likely, Ratio spread)
    {
        var share = spread.DecimalFractions;
        if (!(likely.SquareMeters > 0) || !double.IsFinite(likely.SquareMeters))
            throw new ArgumentOutOfRangeException(nameof(likely), likely, "More than zero and finite.");
        if (!(share >= 0 && share < 1))
            throw new ArgumentOutOfRangeException(nameof(spread), spread, "From 0 up to but not 1.");

        return new AreaRange(likely * (1 - share), likely, likely * (1 + share));
    }
}
