namespace CoatPlan.Climate;

/// <summary>
/// A film minute by minute, where an open heater is put out as its coat begins: what the heater gave the air fades, and the metal follows. Each start has
/// air of its own, so this is walked for every start that is asked about.
/// </summary>
internal struct FilmAfterHeater
{
    private readonly SurfaceCurve metal;
    private readonly RateLaw law;
    private readonly int jobMinuteOfDay;
    private readonly int driesFrom;
    private double liftKelvin;
    private double rate;
    private int day;
    private WeatherDay outside;

    /// <summary>The film as its coat begins.</summary>
    /// <param name="metal">The piece.</param>
    /// <param name="law">How the film dries.</param>
    /// <param name="first">What the piece and the air are at the start of the coat.</param>
    /// <param name="start">The start of the coat.</param>
    /// <param name="minutes">How long it takes to put on.</param>
    /// <param name="jobMinuteOfDay">The minute of the day at which the job starts.</param>
    public FilmAfterHeater(SurfaceCurve metal, RateLaw law, in MinuteState first, int start, int minutes, int jobMinuteOfDay)
    {
        (this.metal, this.law, this.jobMinuteOfDay, driesFrom) = (metal, law, jobMinuteOfDay, start + minutes);
        (day, var index) = AirCurve.Split(start);
        var air = metal.Air.Day(day);
        (outside, liftKelvin) = (air.Weather, air.LiftKelvin![index]);
        (Minute, State) = (start, first);
        rate = Rate(first);
    }

    /// <summary>The minute that is looked at.</summary>
    public int Minute { get; private set; }

    /// <summary>Air and metal at that minute.</summary>
    public MinuteState State { get; private set; }

    /// <summary>Whether all of the coat is sprayed.</summary>
    public readonly bool IsOn => Minute >= driesFrom;

    /// <summary>What has dried since the end of the spraying.</summary>
    public double Done { get; private set; }

    /// <summary>Goes on to the next minute.</summary>
    public void Step()
    {
        liftKelvin = metal.Air.Faded(liftKelvin);
        var next = After(State, Minute + 1);
        var then = Rate(next);
        Done += IsOn ? (rate + then) / 2 : 0;
        (rate, State, Minute) = (then, next, Minute + 1);
    }

    private MinuteState After(in MinuteState before, int minute)
    {
        var (on, index) = AirCurve.Split(minute);
        if (on != day)
        {
            (day, outside) = (on, metal.Air.Day(on).Weather);
        }

        var air = outside.Celsius[index] + liftKelvin;
        return MinuteState.Under(
            outside, index, jobMinuteOfDay, air,
            Humidity.RelativeFraction(air, outside.VapourPascals[index]), Math.Min(air, outside.DewCelsius[index]), metal.Step(before.Surface, before.Air, air));
    }

    private readonly double Rate(in MinuteState now) => law.At(now.Surface, now.Air, now.Relative);
}
