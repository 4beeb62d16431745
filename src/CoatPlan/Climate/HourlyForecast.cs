namespace CoatPlan.Climate;

/// <summary>Weather by the hour, as a file gives it: rows at local times, linear between them.</summary>
/// <param name="Rows">Rows of rising time, at least one.</param>
/// <param name="Repeats">Whether the rows are those of a typical year, taken by month, day and hour in whatever year.</param>
public sealed record HourlyForecast(ImmutableArray<ForecastRow> Rows, bool Repeats);
