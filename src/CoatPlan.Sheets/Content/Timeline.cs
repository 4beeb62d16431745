namespace CoatPlan.Sheets.Content;

/// <summary>The job as a picture: the days one under the other, each by the hours of its clock, so that an hour stands under itself.</summary>
/// <param name="Days">The days, in order.</param>
/// <param name="Wide">The clock hours, 0 to 23, in which somebody may work on any of the days; the others may be drawn narrow.</param>
/// <param name="LowC">Lowest of all curves, °C.</param>
/// <param name="HighC">Highest of all curves, °C.</param>
/// <param name="DegreeUnit">The unit of temperature that is written.</param>
public sealed record Timeline(
    ImmutableArray<TimelineDay> Days, ImmutableSortedSet<int> Wide, double LowC, double HighC, string DegreeUnit) : Block;
