using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>How long an organic-vapour cartridge may be counted on.</summary>
/// <remarks>
/// t = 8 h × (200 ppm / C)^0.70 × humidity ÷ work rate, capped at a shift: a rule of thumb of agency guidance (AIHA, read second-hand), to be held beside the
/// maker's own figures. A cartridge hardly holds what boils at or under 65 °C, and no propellant: where they are in the air it is changed after
/// <c>cartridge-low-life</c> at the latest and never kept to the next day (from memory).
/// </remarks>
public static class CartridgeLife
{
    /// <summary>The time by the rule of thumb alone, at normal work.</summary>
    /// <param name="load">Vapour that a cartridge is made for, by volume of air, at least 0.</param>
    /// <param name="humidity">Relative humidity, 0 to 1.</param>
    /// <param name="figures">The rule's figures.</param>
    public static Duration ByRule(Ratio load, Ratio humidity, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        var whole = figures.Time("cartridge-life");
        if (load.PartsPerMillion <= 0)
            return whole * Damp(humidity, figures);

        var hours = whole.TotalHours * Math.Pow(figures.Number("cartridge-ppm") / load.PartsPerMillion, figures.Number("cartridge-exponent"));
        return Duration.FromHours(Math.Min(whole.TotalHours, hours * Damp(humidity, figures)));
    }

    /// <summary>When to change the cartridges of a plan.</summary>
    /// <param name="air">What the air holds.</param>
    /// <param name="humidity">Highest relative humidity while something is sprayed, 0 to 1.</param>
    /// <param name="figures">The rule's figures.</param>
    public static Duration Of(AirReport air, Ratio humidity, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(air);
        var byRule = ByRule(air.CartridgeLoad, humidity, figures);
        var low = figures.Time("cartridge-low-life");
        return air.BoilsLow.IsEmpty || byRule < low ? byRule : low;
    }

    /// <summary>What damp air leaves of the life: all of it up to one humidity, half from another, straight between.</summary>
    private static double Damp(Ratio humidity, Figures figures)
    {
        var dry = figures.Share("cartridge-dry").DecimalFractions;
        var damp = figures.Share("cartridge-damp").DecimalFractions;
        var least = figures.Share("cartridge-damp-life").DecimalFractions;
        var way = Math.Clamp((humidity.DecimalFractions - dry) / (damp - dry), 0, 1);
        return 1 - (way * (1 - least));
    }
}
