namespace CoatPlan.Climate;

/// <summary>From the rows of a forecast to days from the job's start.</summary>
internal static class ForecastDays
{
    /// <summary>Longest gap between rows across which the weather is known, minutes.</summary>
    private const int LongestGap = 24 * 60;

    /// <summary>The days: linear between rows; before the first and after the last row as in that row, and not known.</summary>
    /// <param name="forecast">The forecast.</param>
    /// <param name="start">The job's start.</param>
    public static Days<WeatherDay> Of(HourlyForecast forecast, LocalDateTime start)
    {
        var knots = (forecast.Repeats ? Repeated(forecast, start) : forecast.Rows.Select(row => Knot(row, row.Time, start))).ToArray();
        return new Days<WeatherDay>((day, before) => Day(knots, day, before));
    }

    private static WeatherDay Day(ForecastKnot[] knots, int day, WeatherDay? before)
    {
        var first = day * Days<WeatherDay>.Minutes;
        if (before is not null && first - Days<WeatherDay>.Minutes > knots[^1].Minute)
        {
            return before;
        }

        const int count = Days<WeatherDay>.Minutes + 1;
        var made = new WeatherDay(new double[count], new double[count], new double[count], new double[count], new bool[count]);
        var next = 0;
        for (var i = 0; i < count; i++)
        {
            while (next < knots.Length && knots[next].Minute < first + i)
            {
                next++;
            }

            Put(made, i, knots[Math.Max(0, next - 1)], knots[Math.Min(knots.Length - 1, next)], first + i);
        }

        return made;
    }

    private static void Put(WeatherDay day, int index, in ForecastKnot before, in ForecastKnot after, int minute)
    {
        var span = after.Minute - before.Minute;
        var share = span > 0 ? Math.Clamp((double)(minute - before.Minute) / span, 0, 1) : 0;
        day.Celsius[index] = Between(before.Celsius, after.Celsius, share);
        day.VapourPascals[index] = Humidity.SaturationPascals(day.Celsius[index]) * Between(before.Relative, after.Relative, share);
        day.WindMetresPerSecond![index] = Between(before.Wind, after.Wind, share);
        day.RainMillimetres![index] = Between(before.Rain, after.Rain, share);
        day.Known![index] = minute == before.Minute || minute == after.Minute
            || (before.Minute < minute && minute < after.Minute && span <= LongestGap);
    }

    private static double Between(double from, double to, double share) => from + (to - from) * share;

    private static ForecastKnot Knot(ForecastRow row, LocalDateTime time, LocalDateTime start)
    {
        return new ForecastKnot(
            (int)Math.Floor(Period.Between(start, time, PeriodUnits.Seconds).Seconds / 60.0), row.Air.DegreesCelsius,
            row.Humidity.DecimalFractions, row.Wind.MetersPerSecond, row.Rain.Millimeters);
    }

    /// <summary>The hours around a job, each from the row of the same month, day and hour; a leap day from the day before it.</summary>
    private static IEnumerable<ForecastKnot> Repeated(HourlyForecast forecast, LocalDateTime start)
    {
        var rows = forecast.Rows.GroupBy(row => HourOfYear(row.Time)).ToDictionary(group => group.Key, group => group.First());
        var first = start.Date.AtMidnight();
        for (var hour = 0; hour <= (DryingCurve.LookAheadDays + 1) * 24; hour++)
        {
            var time = first.PlusHours(hour);
            if (rows.TryGetValue(HourOfYear(time), out var row) || (time is { Month: 2, Day: 29 } && rows.TryGetValue(HourOfYear(time.PlusDays(-1)), out row)))
            {
                yield return Knot(row, time, start);
            }
        }
    }

    private static int HourOfYear(LocalDateTime time) => (time.Month * 32 + time.Day) * 24 + time.Hour;
}
