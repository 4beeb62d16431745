using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Outlook;

/// <summary>How far what happens may be from what was planned, either way; near the plan is likeliest, falling off straight to both ends.</summary>
/// <param name="Step">Share of a step's hands-on time.</param>
/// <param name="Pace">Share of all hands-on times together: a person who is quicker or slower than the figures throughout.</param>
/// <param name="Drying">Share of a product's drying times; one that dries sooner still gets the label's time.</param>
/// <param name="Air">Error of the forecast's temperature.</param>
/// <param name="DewPoint">Error of the forecast's dew point.</param>
public sealed record ChanceSpreads(Ratio Step, Ratio Pace, Ratio Drying, TemperatureDelta Air, TemperatureDelta DewPoint)
{
    /// <summary>Everything goes as planned.</summary>
    public static ChanceSpreads None { get; } = new(Ratio.Zero, Ratio.Zero, Ratio.Zero, TemperatureDelta.Zero, TemperatureDelta.Zero);

    /// <summary>The spreads of the trade.</summary>
    /// <param name="figures">The figures.</param>
    /// <exception cref="ArgumentException">A figure is missing or of another kind.</exception>
    public static ChanceSpreads Of(Figures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return new ChanceSpreads(
            figures.Share("hands-spread"),
            figures.Share("pace-spread"),
            figures.Share("drying-spread"),
            figures.Difference("weather-spread"),
            figures.Difference("dew-point-spread"));
    }
}
