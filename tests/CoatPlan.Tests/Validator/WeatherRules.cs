namespace CoatPlan.Tests.Validator;

/// <summary>The air that the plan prints is the job's weather, and each coat starts and stays inside the label's limits until it is touch-dry.</summary>
internal static class WeatherRules
{
    private const double PrintedC = 0.06;
    private const double WeatherC = 0.15;
    private const double DewC = 0.3;
    private const double PrintedShare = 0.006;
    private const double WeatherShare = 0.02;
    private const double DayFirst = 8 * 60;
    private const double DayLast = 19 * 60;
    private const double WindLimitMph = 10;

    public static IEnumerable<Violation> Check(PlanUnderTest test) =>
    [
        .. test.Plan.Steps.SelectMany(step => Consistent(step).Concat(Weather(test, step))),
        .. test.Coats.Where(step => !test.IsDone(step)).SelectMany(step => AtStart(test, step).Concat(UntilTouch(test, step)).Concat(Outdoors(test, step))),
    ];

    private static IEnumerable<Violation> Consistent(PlannedStep step)
    {
        if (step.Humidity > 0.02 && Math.Abs(Psychrometry.DewPointC(step.Humidity * Psychrometry.SaturationHpa(step.AirC)) - step.DewPointC) > DewC + DewSlack(step))
        {
            yield return new Violation(Rules.DewPointInconsistent, step.Id, $"{step.AirC} °C at {step.Humidity} does not have a dew point of {step.DewPointC} °C");
        }
    }

    /// <summary>Where the air is dry, the last printed digit of the humidity moves the dew point.</summary>
    private static double DewSlack(PlannedStep step) => step.Humidity < 0.2 ? 0.01 / step.Humidity : 0;

    private static IEnumerable<Violation> Weather(PlanUnderTest test, PlannedStep step)
    {
        if (test.Job.Weather is not { } weather)
        {
            yield break;
        }

        double outside = weather.AirC(step.Start), held = Math.Max(outside, test.Job.HoldC ?? double.MinValue);
        double least = test.Job.OpenHeater ? outside : held;
        // The warmth that an open heater left behind fades on top of the weather, which may rise meanwhile.
        double left = test.Job.OpenHeater ? Math.Max(0, (test.Job.HoldC ?? double.MinValue) - weather.LowestC) : 0;
        double most = Math.Max(held, outside + left);
        if (step.AirC < least - WeatherC || step.AirC > most + WeatherC)
        {
            yield return new Violation(Rules.WeatherMismatch, step.Id, $"air {step.AirC} °C, the job's weather gives {least} to {most}");
        }
        else if (Math.Abs(step.DewPointC - weather.DewC(step.Start)) > DewC)
        {
            yield return new Violation(Rules.WeatherMismatch, step.Id, $"dew point {step.DewPointC} °C, the job's weather gives {weather.DewC(step.Start)}");
        }
        else if (test.Job.HoldC is null && Math.Abs(step.Humidity - weather.Humidity(step.Start)) > WeatherShare)
        {
            yield return new Violation(Rules.WeatherMismatch, step.Id, $"humidity {step.Humidity}, the job's weather gives {weather.Humidity(step.Start)}");
        }

        // Metal follows the air, so it can be no colder and no warmer than the air has been; under a clear night sky it can be colder.
        double coldest = test.Job.Outdoors ? double.MinValue : weather.LowestC;
        if (step.SurfaceC < coldest - WeatherC || step.SurfaceC > Math.Max(weather.HighestC + left, test.Job.HoldC ?? double.MinValue) + WeatherC)
        {
            yield return new Violation(Rules.MetalMismatch, step.Id, $"metal at {step.SurfaceC} °C, where the air never was");
        }
    }

    private static IEnumerable<Violation> AtStart(PlanUnderTest test, PlannedStep step)
    {
        if (test.Label(step.Product) is not { } label)
        {
            yield break;
        }

        if (label.Air is { } air && !air.Allow(step.AirC, PrintedC))
        {
            yield return new Violation(Rules.AirLimit, step.Id, $"air {step.AirC} °C, label {air}");
        }

        if (label.Surface is { } surface && !surface.Allow(step.SurfaceC, PrintedC))
        {
            yield return new Violation(Rules.SurfaceLimit, step.Id, $"metal {step.SurfaceC} °C, label {surface}");
        }

        if (label.Humidity is { } humidity && !humidity.Allow(step.Humidity, PrintedShare))
        {
            yield return new Violation(Rules.HumidityLimit, step.Id, $"humidity {step.Humidity}, label {humidity}");
        }

        if (step.SurfaceC - step.DewPointC < label.AboveDewC - PrintedC)
        {
            yield return new Violation(Rules.DewMargin, step.Id, $"metal {step.SurfaceC - step.DewPointC} °C over the dew point, least {label.AboveDewC}");
        }
    }

    private static IEnumerable<Violation> UntilTouch(PlanUnderTest test, PlannedStep step)
    {
        if (test.Job.Weather is not { } weather || test.Job.HoldC is not null || test.Label(step.Product) is not { } label)
        {
            yield break;
        }

        if (label.Air is { } airThen && !airThen.Allow(step.AirC, PrintedC) || label.Humidity is { } dampThen && !dampThen.Allow(step.Humidity, PrintedShare))
        {
            yield break;
        }

        for (double at = step.Start; at <= step.End + test.LeastMinutes(label, "touch"); at += 5)
        {
            if (label.Air is { } air && !air.Allow(weather.AirC(at), WeatherC) || label.Humidity is { } humidity && !humidity.Allow(weather.Humidity(at), WeatherShare))
            {
                yield return new Violation(Rules.LimitsBeforeTouch, step.Id, $"at {WallMinutes.Write(at)} the air leaves the label's limits before the film is touch-dry");
                yield break;
            }
        }
    }

    private static IEnumerable<Violation> Outdoors(PlanUnderTest test, PlannedStep step)
    {
        if (!test.Job.Outdoors || !step.Spray)
        {
            yield break;
        }

        double minute = step.Start % WallMinutes.Day;
        if (minute < DayFirst || minute + step.End - step.Start > DayLast)
        {
            yield return new Violation(Rules.NightSpray, step.Id, "sprayed outdoors between 19:00 and 08:00");
        }

        if (test.Job.Weather?.WindMph is { } wind && wind(step.Start) > WindLimitMph + 0.05 || test.Job.Weather?.RainMm is { } rain && rain(step.Start) > 0)
        {
            yield return new Violation(Rules.WindOrRain, step.Id, "sprayed outdoors in wind or rain");
        }
    }
}
