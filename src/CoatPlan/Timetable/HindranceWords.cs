using CoatPlan.Climate;
using CoatPlan.Quantities;
using NodaTime.Text;
using UnitsNet;

namespace CoatPlan.Timetable;

/// <summary>Why the air does not permit a coat, in words.</summary>
internal static class HindranceWords
{
    private static readonly LocalDateTimePattern Moment = LocalDateTimePattern.CreateWithInvariantCulture("ddd HH:mm");

    /// <summary>A sentence that names the rule, what would be read, the limit, and until when.</summary>
    public static string Of(StartHindrance hindrance, Clock clock, QuantityFormat format)
    {
        var until = hindrance.Until is { } over ? $" until {Moment.Format(clock.At(over))}" : " for the rest of the 60 days";
        var then = hindrance.From > hindrance.Asked ? $" at {Moment.Format(clock.At(hindrance.From))}, while it would still be wet" : "";
        return $"{Rule(hindrance, format)}{then}{until}.";
    }

    private static string Rule(StartHindrance hindrance, QuantityFormat format)
    {
        var (measured, limit) = (hindrance.Measured, hindrance.Limit);
        return hindrance.Rule switch
        {
            StartRule.BeyondForecast => "The forecast does not reach this far",
            StartRule.AirTooCold => $"Air {Degrees(measured)} is below the label's {Degrees(limit)}",
            StartRule.AirTooWarm => $"Air {Degrees(measured)} is above the label's {Degrees(limit)}",
            StartRule.SurfaceTooCold => $"Metal {Degrees(measured)} is below the label's {Degrees(limit)}",
            StartRule.SurfaceTooWarm => $"Metal {Degrees(measured)} is above the label's {Degrees(limit)}",
            StartRule.TooDry => $"Humidity {Percent(measured)} is below the label's {Percent(limit)}",
            StartRule.TooDamp => $"Humidity {Percent(measured)} is above the label's {Percent(limit)}",
            StartRule.NearDewPoint => $"Metal is {Apart(measured)} above the dew point, less than {Apart(limit)}",
            StartRule.Night => "Outdoors nothing may be wet in the evening, at night and in the early morning",
            StartRule.Rain => "Rain",
            StartRule.Wind => $"Wind {format.Speed(Speed.FromMetersPerSecond(measured))} is over {format.Speed(Speed.FromMetersPerSecond(limit))}",
            StartRule.NeverDry => "It is too cold for the film to dry",
            _ => throw new ArgumentOutOfRangeException(nameof(hindrance), hindrance.Rule, "A start rule."),
        };

        string Degrees(double celsius) => format.Temperature(Temperature.FromDegreesCelsius(celsius));
        string Apart(double kelvin) => format.TemperatureDelta(TemperatureDelta.FromDegreesCelsius(kelvin));
    }

    private static string Percent(double share) => QuantityFormat.Ratio(Ratio.FromDecimalFractions(Math.Round(share, 3)));
}
