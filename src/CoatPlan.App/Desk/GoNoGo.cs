using CoatPlan.App.Wording;
using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.App.Desk;

/// <summary>Whether a coat may start by what was just read at the bench: each reading against the label's limit for it.</summary>
/// <param name="IsGo">Whether every reading is inside its limit.</param>
/// <param name="Says">A sentence for each limit, the ones that are not kept first.</param>
internal sealed record GoNoGo(bool IsGo, ImmutableArray<string> Says)
{
    /// <summary>Judges readings.</summary>
    /// <param name="limits">The label's limits.</param>
    /// <param name="readings">Air, metal and humidity as a person types them, with commas between.</param>
    /// <param name="units">The job's units.</param>
    /// <returns>The judgement; null where the readings cannot be read.</returns>
    public static GoNoGo? Of(PlanLimits limits, string readings, PrintUnits units)
    {
        var parts = readings.Split(',', StringSplitOptions.TrimEntries);
        if (parts.Length != 3)
            return null;

        var (air, metal, humidity) = (QuantityText.Temperature(parts[0]), QuantityText.Temperature(parts[1]), QuantityText.Ratio(parts[2]));
        if (!air.Ok || !metal.Ok || !humidity.Ok || humidity.Value.DecimalFractions is <= 0 or > 1 || !IsWeather(air.Value) || !IsWeather(metal.Value))
            return null;

        var dewPoint = Humidity.DewPoint(air.Value, humidity.Value);
        var above = metal.Value.DegreesCelsius - dewPoint.DegreesCelsius;
        ImmutableArray<(bool Kept, string Says)> found =
        [
            Temperatures("air", air.Value.DegreesCelsius, limits.AirLowC, limits.AirHighC, units),
            Temperatures("metal", metal.Value.DegreesCelsius, limits.SurfaceLowC, limits.SurfaceHighC, units),
            Humidities(humidity.Value.DecimalFractions, limits),
            (above >= limits.AboveDewC, $"metal is {Written.TemperatureDifference(above, units)} above the dew point of {Written.Temperature(dewPoint.DegreesCelsius, units)}; "
                + $"the least is {Written.TemperatureDifference(limits.AboveDewC, units)}"),
        ];
        return new GoNoGo(found.All(each => each.Kept), [.. found.OrderBy(each => each.Kept).Select(each => $"{(each.Kept ? "inside: " : "OUTSIDE: ")}{each.Says}")]);
    }

    // Wide enough for any workshop; outside of it somebody mistyped a unit.
    private static bool IsWeather(Temperature read) => read.DegreesCelsius is > -40 and < 80;

    private static (bool Kept, string Says) Temperatures(string what, double read, double low, double high, PrintUnits units) =>
        (read >= low && read <= high, $"{what} {Written.Temperature(read, units)}; the label wants {Written.Temperature(low, units)} to {Written.Temperature(high, units)}");

    private static (bool Kept, string Says) Humidities(double read, PlanLimits limits) =>
        (read >= limits.HumidityLow && read <= limits.HumidityHigh,
            $"humidity {Written.Percent(read)}; the label wants {(limits.HumidityLow > 0 ? $"{Written.Percent(limits.HumidityLow)} to" : "at most")} {Written.Percent(limits.HumidityHigh)}");
}
