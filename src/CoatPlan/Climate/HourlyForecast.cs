namespace CoatPlan.Climate;

/// <summary>Weather by the hour, as a file gives it: rows at local times, linear between them.</summary>
/// <remarks>
/// Outside of its rows, and across a gap of more than a day between two of them, the weather is not known: no coat is begun there, and what is
/// drying dries as in the nearest row.
/// </remarks>
/// <param name="Rows">Rows of rising time, at least one.</param>
/// <param name="Repeats">Whether the rows are those of a typical year, taken by month, day and hour in whatever year.</param>
public sealed record HourlyForecast(ImmutableArray<ForecastRow> Rows, bool Repeats)
{
    /// <summary>Reads a forecast file: comma-separated with a header that names units, or EPW.</summary>
    /// <remarks><c>time,air °F,humidity %,wind mph,rain mm</c>; a dew point may stand for the humidity, wind and rain may be missing.</remarks>
    /// <param name="text">What is in the file.</param>
    /// <param name="fileName">Its name as the user gave it; null: not said.</param>
    public static ForecastReading Read(string text, string? fileName = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        return EpwForecast.IsIt(text) ? EpwForecast.Read(text, fileName) : CsvForecast.Read(text, fileName);
    }
}
