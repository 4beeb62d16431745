namespace CoatPlan.Climate;

/// <summary>The temperature of a piece as a function of time: it follows the air, late.</summary>
/// <remarks>
/// After a cold night a fender of 0.8 mm is as warm as the garage within a quarter of an hour, an iron casting after two hours; in between it
/// may be colder than the dew point, and sweats. dTs/dt = (Tair − Ts)/τ, solved exactly over each minute in which the air runs straight.
/// </remarks>
public sealed class SurfaceCurve
{
    /// <summary>Days that begin this close to each other, K, run alike.</summary>
    private const double Alike = 1e-9;

    private readonly Days<double[]> days;
    private readonly double fade;
    private readonly Memo<RateLaw, DryingCurve> dryings;

    internal SurfaceCurve(AirCurve air, double lagMinutes)
    {
        Air = air;
        LagMinutes = lagMinutes;
        fade = lagMinutes > 0 ? Math.Exp(-1 / lagMinutes) : 0;
        days = new Days<double[]>(Next);
        dryings = new Memo<RateLaw, DryingCurve>(law => new DryingCurve(this, law));
    }

    /// <summary>The air that the piece follows.</summary>
    public AirCurve Air { get; }

    /// <summary>Time constant τ with which the piece follows, minutes, 0 or more.</summary>
    public double LagMinutes { get; }

    /// <summary>What would be measured at this piece.</summary>
    /// <param name="minute">Minutes from the job's start; one before it counts as the start.</param>
    public Conditions At(int minute)
    {
        var (day, index) = AirCurve.Split(minute);
        return Air.At(minute, days[day][index]);
    }

    /// <summary>Temperature at a minute, °C; one before the job's start counts as the start.</summary>
    internal double CelsiusAt(int minute)
    {
        var (day, index) = AirCurve.Split(minute);
        return days[day][index];
    }

    /// <summary>Temperature at each minute of a day, 1441 values in °C.</summary>
    internal double[] Day(int day) => days[day];

    /// <summary>How fast a film dries here.</summary>
    internal DryingCurve Drying(RateLaw law) => dryings[law];

    /// <summary>The surface one minute later, while the air runs straight from one temperature to another.</summary>
    internal double Step(double surface, double airFrom, double airTo)
    {
        var slope = airTo - airFrom;
        return airTo - slope * LagMinutes + (surface - airFrom + slope * LagMinutes) * fade;
    }

    private double[] Next(int day, double[]? before)
    {
        var air = Air.Day(day).Celsius;
        if (before is not null && ReferenceEquals(air, Air.Day(day - 1).Celsius) && Math.Abs(before[^1] - before[0]) <= Alike)
        {
            return before;
        }

        var surface = new double[air.Length];
        surface[0] = before is null ? air[0] : before[^1];
        for (var i = 1; i < surface.Length; i++)
        {
            surface[i] = Step(surface[i - 1], air[i - 1], air[i]);
        }

        return surface;
    }
}
