using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>How a coat is laid, for the work sheet.</summary>
/// <param name="FanWidth">Width of one pass.</param>
/// <param name="Spacing">From the middle of one pass to the middle of the next: the width less what passes overlap by.</param>
/// <param name="Distance">Nozzle to surface.</param>
public sealed record SprayPasses(Length FanWidth, Length Spacing, Length Distance)
{
    /// <summary>The passes of a way of putting paint on; null for a brush.</summary>
    /// <param name="method">The way.</param>
    /// <param name="figures">The share of a pass that the next one covers again.</param>
    public static SprayPasses? Of(CoatingMethod method, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(method);
        ArgumentNullException.ThrowIfNull(figures);
        return method is { FanWidth: { } fan, Distance: { } distance }
            ? new SprayPasses(fan, fan * (1 - figures.Share("overlap").DecimalFractions), distance)
            : null;
    }

    /// <summary>Passes that lay one even coat over a width: it is crossed at <see cref="Spacing"/>, half a pass lapping each edge.</summary>
    /// <param name="width">Across the passes, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width that is not more than zero.</exception>
    public int Across(Length width)
    {
        if (!(width.Meters > 0))
            throw new ArgumentOutOfRangeException(nameof(width), width, "More than zero.");

        return (int)Math.Ceiling((width / Spacing) - 1e-9) + 1;
    }
}
