namespace CoatPlan.Paint;

/// <summary>Between CIE lightness L* and luminous reflectance. Source: CIE 1976 (from memory).</summary>
internal static class CieLightness
{
    private const double LinearUpTo = 216.0 / 24389;
    private const double Slope = 24389.0 / 27;

    /// <summary>Reflectance 0 to 1 of a lightness 0 to 100.</summary>
    public static double Reflectance(double lightness) => lightness > Slope * LinearUpTo
        ? Math.Pow((lightness + 16) / 116, 3)
        : lightness / Slope;

    /// <summary>Lightness 0 to 100 of a reflectance 0 to 1.</summary>
    public static double Of(double reflectance) => reflectance > LinearUpTo
        ? (116 * Math.Cbrt(reflectance)) - 16
        : Slope * reflectance;
}
