using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Climate;

/// <summary>Says in words why a coat may not start.</summary>
public static class StartHindrances
{
    /// <summary>A clause such as "air below 50 °F until Sat 09:40", or "humidity over 65 % from 18:10, before the film is dry to touch".</summary>
    /// <param name="hindrance">What is in the way.</param>
    /// <param name="place">The place, for the time of a minute.</param>
    /// <param name="units">The units to print.</param>
    public static string Say(StartHindrance hindrance, PlaceClimate place, PrintUnits units)
    {
        ArgumentNullException.ThrowIfNull(hindrance);
        ArgumentNullException.ThrowIfNull(place);
        var asked = place.TimeAt(hindrance.Asked);
        if (hindrance.Rule == StartRule.NeverDry)
        {
            return "in this air the film would never be dry to touch";
        }

        var rule = Rule(hindrance, units == PrintUnits.Metric ? QuantityFormat.Metric : QuantityFormat.Us);
        return hindrance.From > hindrance.Asked ? $"{rule} from {Clock(place.TimeAt(hindrance.From), asked)}, before the film is dry to touch"
            : hindrance.Until is { } until ? $"{rule} until {Clock(place.TimeAt(until), asked)}"
            : $"{rule} throughout";
    }

    private static string Rule(StartHindrance hindrance, QuantityFormat format)
    {
        var limit = hindrance.Limit;
        return hindrance.Rule switch
        {
            StartRule.BeyondForecast => "no forecast",
            StartRule.AirTooCold => "air below " + format.Temperature(Temperature.FromDegreesCelsius(limit)),
            StartRule.AirTooWarm => "air above " + format.Temperature(Temperature.FromDegreesCelsius(limit)),
            StartRule.SurfaceTooCold => "metal below " + format.Temperature(Temperature.FromDegreesCelsius(limit)),
            StartRule.SurfaceTooWarm => "metal above " + format.Temperature(Temperature.FromDegreesCelsius(limit)),
            StartRule.TooDry => "humidity under " + QuantityFormat.Ratio(Ratio.FromDecimalFractions(limit)),
            StartRule.TooDamp => "humidity over " + QuantityFormat.Ratio(Ratio.FromDecimalFractions(limit)),
            StartRule.NearDewPoint => $"metal less than {format.TemperatureDelta(TemperatureDelta.FromKelvins(limit))} above the dew point",
            StartRule.Night => "metal outdoors falls below the air overnight,",
            StartRule.Rain => "rain",
            StartRule.Wind => "wind over " + format.Speed(Speed.FromMetersPerSecond(limit)),
            _ => throw new ArgumentOutOfRangeException(nameof(hindrance), hindrance.Rule, "There is no such rule."),
        };
    }

    private static string Clock(LocalDateTime time, LocalDateTime asked) =>
        time.ToString(time.Date == asked.Date ? "HH:mm" : "ddd HH:mm", CultureInfo.InvariantCulture);
}
