namespace CoatPlan.Climate;

/// <summary>A label's own times by temperature: straight in the logarithm of time between rows, and as in the edge row beyond the edges.</summary>
/// <remarks>50 °F: 60 min, 70 °F: 30 min gives 42.4 min at 60 °F, and 60 min at 45 °F, where the label may forbid the coat anyway.</remarks>
internal sealed class TimeTable : IEquatable<TimeTable>
{
    private readonly ImmutableArray<double> celsius;
    private readonly ImmutableArray<double> logMinutes;

    /// <summary>A table.</summary>
    /// <param name="rows">Temperature in °C and minutes above 0, of rising temperature; at least one.</param>
    public TimeTable(IEnumerable<(double Celsius, double Minutes)> rows)
    {
        var sorted = rows.OrderBy(row => row.Celsius).ToArray();
        celsius = [.. sorted.Select(row => row.Celsius)];
        logMinutes = [.. sorted.Select(row => Math.Log(row.Minutes))];
    }

    /// <summary>Minutes at a temperature.</summary>
    public double MinutesAt(double at)
    {
        var above = 0;
        while (above < celsius.Length && celsius[above] < at)
        {
            above++;
        }

        if (above == 0 || above == celsius.Length)
        {
            return Math.Exp(logMinutes[Math.Min(above, celsius.Length - 1)]);
        }

        var share = (at - celsius[above - 1]) / (celsius[above] - celsius[above - 1]);
        return Math.Exp(logMinutes[above - 1] + (logMinutes[above] - logMinutes[above - 1]) * share);
    }

    /// <inheritdoc/>
    public bool Equals(TimeTable? other) =>
        other is not null && celsius.AsSpan().SequenceEqual(other.celsius.AsSpan()) && logMinutes.AsSpan().SequenceEqual(other.logMinutes.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as TimeTable);

    /// <inheritdoc/>
    public override int GetHashCode() => celsius.Concat(logMinutes).Aggregate(celsius.Length, HashCode.Combine);
}
