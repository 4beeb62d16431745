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
            StartRule.AirTooCold => Beyond("Air", Degrees(measured), "below", Degrees(limit)),
            StartRule.AirTooWarm => Beyond("Air", Degrees(measured), "above", Degrees(limit)),
            StartRule.SurfaceTooCold => Beyond("Metal", Degrees(measured), "below", Degrees(limit)),
            StartRule.SurfaceTooWarm => Beyond("Metal", Degrees(measured), "above", Degrees(limit)),
            StartRule.TooDry => Beyond("Humidity", Percent(measured), "below", Percent(limit)),
            StartRule.TooDamp => Beyond("Humidity", Percent(measured), "above", Percent(limit)),
            StartRule.NearDewPoint => Apart(measured) == Apart(limit)
                ? $"Metal is just under {Apart(limit)} above the dew point"
                : $"Metal is {Apart(measured)} above the dew point, less than {Apart(limit)}",
            StartRule.Night => "Outdoors nothing may be wet in the evening, at night and in the early morning",
            StartRule.Rain => "Rain",
            StartRule.Wind => $"Wind {format.Speed(Speed.FromMetersPerSecond(measured))} is over {format.Speed(Speed.FromMetersPerSecond(limit))}",
            StartRule.NeverDry => "It is too cold for the film to dry",
            _ => throw new ArgumentOutOfRangeException(nameof(hindrance), hindrance.Rule, "A start rule."),
        };

        string Degrees(double celsius) => format.Temperature(Temperature.FromDegreesCelsius(celsius));
        string Apart(double kelvin) => format.TemperatureDelta(TemperatureDelta.FromDegreesCelsius(kelvin));
    }

    // Two figures that read alike would say that a limit is kept and broken at once.
    private static string Beyond(string what, string measured, string side, string limit) =>
        measured == limit ? $"{what} is just {side} the label's {limit}" : $"{what} {measured} is {side} the label's {limit}";

    private static string Percent(double share) => QuantityFormat.Ratio(Ratio.FromDecimalFractions(Math.Round(share, 3)));
}
