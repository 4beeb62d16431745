namespace CoatPlan.Climate;

/// <summary>What the start rules look at, at one minute.</summary>
internal readonly record struct MinuteState(
    double Air, double Relative, double Dew, double Surface, double Wind, double Rain, bool Known, int MinuteOfDay)
{
    /// <summary>Air and metal of a place under a sky.</summary>
    /// <param name="sky">The weather of the day.</param>
    /// <param name="index">The minute of that day, counted from the job's start.</param>
    /// <param name="jobMinuteOfDay">The minute of the day at which the job starts.</param>
    /// <param name="air">Air, °C.</param>
    /// <param name="relative">Relative humidity, 0 to 1.</param>
    /// <param name="dew">Dew point, °C.</param>
    /// <param name="surface">Metal, °C.</param>
    public static MinuteState Under(WeatherDay sky, int index, int jobMinuteOfDay, double air, double relative, double dew, double surface) => new(
        air, relative, dew, surface,
        sky.WindMetresPerSecond?[index] ?? 0, sky.RainMillimetres?[index] ?? 0, sky.Known?[index] ?? true,
        (jobMinuteOfDay + index) % Days<AirDay>.Minutes);
}
