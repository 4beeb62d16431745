using System.Globalization;

namespace CoatPlan.Tests.Validator;

/// <summary>The air in the work place without its heater, derived again from the job file.</summary>
internal sealed record Weather
{
    // Share of the day's range below its highest, clock hours 1 to 24. Source: ASHRAE Fundamentals 2021 ch. 14 Table 6 (published, read second-hand).
    private static readonly double[] s_belowHighest =
    [
        0.88, 0.92, 0.95, 0.98, 1.00, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13,
        0.05, 0.00, 0.00, 0.06, 0.14, 0.24, 0.39, 0.50, 0.59, 0.68, 0.75, 0.82,
    ];

    public required Func<double, double> AirC { get; init; }
    public required Func<double, double> DewC { get; init; }
    public required double LowestC { get; init; }
    public required double HighestC { get; init; }
    public required bool IsSteady { get; init; }
    public Func<double, double>? WindMph { get; init; }
    public Func<double, double>? RainMm { get; init; }

    public double Humidity(double at) => Psychrometry.SaturationHpa(DewC(at)) / Psychrometry.SaturationHpa(AirC(at));

    public static Weather Steady(double airC, double humidity)
    {
        double dew = Psychrometry.DewPointC(humidity * Psychrometry.SaturationHpa(airC));
        return new Weather { AirC = _ => airC, DewC = _ => dew, LowestC = airC, HighestC = airC, IsSteady = true };
    }

    public static Weather Daily(double lowC, double highC, double? dewC, double? humidityAtMean)
    {
        double range = highC - lowC;
        double mean = highC - range * s_belowHighest.Average();
        double dew = dewC ?? Psychrometry.DewPointC(humidityAtMean!.Value * Psychrometry.SaturationHpa(mean));

        double Air(double at)
        {
            double hour = at % WallMinutes.Day / 60;
            int before = (int)Math.Floor(hour);
            double share = hour - before;
            return highC - range * ((1 - share) * Fraction(before) + share * Fraction(before + 1));
        }

        return new Weather { AirC = Air, DewC = at => Math.Min(dew, Air(at)), LowestC = lowC, HighestC = highC, IsSteady = false };
    }

    /// <summary>Null where the columns are not the plain ones of the job-file page.</summary>
    public static Weather? Hours(string csv)
    {
        string[][] rows = [.. csv.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0).Select(line => line.Split(',').Select(cell => cell.Trim()).ToArray())];
        if (rows.Length < 2)
        {
            return null;
        }

        string[] header = rows[0];
        int Column(string word) => Array.FindIndex(header, name => name.StartsWith(word, StringComparison.OrdinalIgnoreCase));
        int time = Column("time"), air = Column("air"), humidity = Column("humidity"), wind = Column("wind"), rain = Column("rain");
        if (time < 0 || air < 0 || humidity < 0)
        {
            return null;
        }

        double[] times = [.. rows.Skip(1).Select(row => WallMinutes.Read(row[time]))];
        double[] Cells(int column, Func<double, double> unit) => [.. rows.Skip(1).Select(row => unit(double.Parse(row[column], CultureInfo.InvariantCulture)))];
        double[] airs = Cells(air, header[air].Contains('F') ? f => (f - 32) / 1.8 : c => c);
        double[] dampness = Cells(humidity, header[humidity].Contains('%') ? p => p / 100 : share => share);
        Func<double, double>? winds = null, rains = null;
        if (wind >= 0)
        {
            double perMph = header[wind].Contains("mph") ? 1 : header[wind].Contains("km/h") ? 1 / 1.609344 : 1 / 0.44704;
            double[] speeds = Cells(wind, speed => speed * perMph);
            winds = at => Between(times, speeds, at);
        }

        if (rain >= 0)
        {
            double[] falls = Cells(rain, fall => fall);
            rains = at => Between(times, falls, at);
        }

        double Air(double at) => Between(times, airs, at);
        return new Weather
        {
            AirC = Air,
            DewC = at => Psychrometry.DewPointC(Between(times, dampness, at) * Psychrometry.SaturationHpa(Air(at))),
            LowestC = airs.Min(),
            HighestC = airs.Max(),
            IsSteady = false,
            WindMph = winds,
            RainMm = rains,
        };
    }

    private static double Fraction(int hour) => s_belowHighest[(hour + 23) % 24];

    private static double Between(double[] times, double[] values, double at)
    {
        int after = Array.FindIndex(times, time => time > at);
        if (after == 0)
        {
            return values[0];
        }

        if (after < 0)
        {
            return values[^1];
        }

        double share = (at - times[after - 1]) / (times[after] - times[after - 1]);
        return values[after - 1] + share * (values[after] - values[after - 1]);
    }
}
