using UnitsNet;

namespace CoatPlan.Climate;

/// <summary>How much water the air holds, and at which temperature it begins to fall out.</summary>
/// <remarks>
/// The Magnus form with improved coefficients, over water: e = 6.1094 hPa · exp(17.625 T / (243.04 °C + T)).
/// Below 0 °C it gives the dew point over water, not the frost point of many weather files, and so the lower of the two.
/// Source: Alduchov &amp; Eskridge 1996, J. Appl. Meteor. 35(4) 601–609.
/// </remarks>
public static class Humidity
{
    /// <summary>Standard pressure of the atmosphere at sea level. Source: ISO 2533.</summary>
    internal const double StandardPascals = 101_325;

    private const double MagnusPascals = 610.94;
    private const double MagnusFactor = 17.625;
    private const double MagnusCelsius = 243.04;

    /// <summary>Molar mass of water over that of dry air. Source: ASHRAE Fundamentals 2017 ch. 1.</summary>
    private const double WaterToAir = 0.621945;

    /// <summary>Gas constant of water vapour, J/kg·K. Source: ASHRAE Fundamentals 2017 ch. 1 (8314.472 / 18.015268).</summary>
    private const double VapourConstant = 461.524;

    /// <summary>The pressure of water vapour in saturated air.</summary>
    /// <param name="air">Air temperature, above −100 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above −100 °C.</exception>
    public static Pressure Saturation(Temperature air) => Pressure.FromPascals(SaturationPascals(Checked(air)));

    /// <summary>The temperature to which air must cool for its water to begin to fall out; never above the air.</summary>
    /// <param name="air">Air temperature, above −100 °C.</param>
    /// <param name="relative">Relative humidity, more than 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static Temperature DewPoint(Temperature air, Ratio relative)
    {
        var celsius = Checked(air);
        return Temperature.FromDegreesCelsius(Math.Min(celsius, DewPointCelsius(SaturationPascals(celsius) * Checked(relative))));
    }

    /// <summary>The pressure of the water vapour in the air.</summary>
    /// <param name="air">Air temperature, above −100 °C.</param>
    /// <param name="relative">Relative humidity, more than 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static Pressure Vapour(Temperature air, Ratio relative) =>
        Pressure.FromPascals(SaturationPascals(Checked(air)) * Checked(relative));

    /// <summary>The relative humidity of air with a dew point, at most 1.</summary>
    /// <param name="air">Air temperature, above −100 °C.</param>
    /// <param name="dewPoint">Dew point, above −100 °C; one above the air counts as the air.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is not above −100 °C.</exception>
    public static Ratio Relative(Temperature air, Temperature dewPoint) =>
        Ratio.FromDecimalFractions(RelativeFraction(Checked(air), SaturationPascals(Checked(dewPoint))));

    /// <summary>The mass of water per mass of dry air, at sea level.</summary>
    /// <param name="air">Air temperature, above −100 °C.</param>
    /// <param name="relative">Relative humidity, more than 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static MassFraction MixingRatio(Temperature air, Ratio relative)
    {
        var vapour = SaturationPascals(Checked(air)) * Checked(relative);
        return MassFraction.FromDecimalFractions(WaterToAir * vapour / (StandardPascals - vapour));
    }

    /// <summary>The mass of water in a volume of air.</summary>
    /// <param name="air">Air temperature, above −100 °C.</param>
    /// <param name="relative">Relative humidity, more than 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static Density WaterContent(Temperature air, Ratio relative) =>
        Density.FromKilogramsPerCubicMeter(SaturationPascals(Checked(air)) * Checked(relative) / (VapourConstant * air.Kelvins));

    internal static double SaturationPascals(double celsius) =>
        MagnusPascals * Math.Exp(MagnusFactor * celsius / (MagnusCelsius + celsius));

    internal static double DewPointCelsius(double vapourPascals)
    {
        var share = Math.Log(vapourPascals / MagnusPascals);
        return MagnusCelsius * share / (MagnusFactor - share);
    }

    internal static double RelativeFraction(double celsius, double vapourPascals) =>
        Math.Min(1, vapourPascals / SaturationPascals(celsius));

    private static double Checked(Temperature temperature) =>
        temperature.DegreesCelsius is > -100 and < 1000
            ? temperature.DegreesCelsius
            : throw new ArgumentOutOfRangeException(nameof(temperature), temperature.DegreesCelsius, "A temperature must be above -100 °C and below 1000 °C.");

    private static double Checked(Ratio relative) =>
        relative.DecimalFractions is > 0 and <= 1
            ? relative.DecimalFractions
            : throw new ArgumentOutOfRangeException(nameof(relative), relative.DecimalFractions, "Relative humidity must be more than 0 and at most 1.");
}
