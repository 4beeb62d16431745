namespace CoatPlan.Sheets.Drawing;

/// <summary>Where each minute of a day lies across a picture. Clock hours in which nobody works on any day are narrow, on every day alike.</summary>
internal sealed class HourScale
{
    private const double MostNarrow = 0.25;
    private const double LeastNarrow = 0.06;

    // All narrow hours together take at most so much of what the others take, as far as the least allows.
    private const double NarrowTogether = 0.4;

    private const int MinutesPerHour = 60;

    private readonly double[] edges;

    /// <summary>The scale of a picture.</summary>
    /// <param name="wide">The clock hours that take a whole hour's width, 0 to 23.</param>
    /// <param name="width">Width of a day, points.</param>
    public HourScale(ImmutableSortedSet<int> wide, double width)
    {
        var narrow = Math.Clamp(NarrowTogether * wide.Count / Math.Max(1, NodaConstants.HoursPerDay - wide.Count), LeastNarrow, MostNarrow);
        var shares = Enumerable.Range(0, NodaConstants.HoursPerDay).Select(hour => wide.IsEmpty || wide.Contains(hour) ? 1 : narrow).ToArray();
        var unit = width / shares.Sum();
        edges = new double[NodaConstants.HoursPerDay + 1];
        for (var hour = 0; hour < shares.Length; hour++)
            edges[hour + 1] = edges[hour] + (shares[hour] * unit);
    }

    /// <summary>Where an hour begins.</summary>
    /// <param name="hour">0 to 24.</param>
    public double Hour(int hour) => edges[hour];

    /// <summary>Where a moment lies on a day; what is before or after it lies on its edge.</summary>
    /// <param name="time">The moment.</param>
    /// <param name="day">The day.</param>
    public double At(LocalDateTime time, LocalDate day)
    {
        if (time.Date < day)
            return 0;
        if (time.Date > day)
            return edges[^1];

        return edges[time.Hour] + ((edges[time.Hour + 1] - edges[time.Hour]) * (time.Minute + (time.Second / (double)MinutesPerHour)) / MinutesPerHour);
    }
}
