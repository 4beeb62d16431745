namespace CoatPlan.Bench.Screens;

/// <summary>Milliseconds that something took, each time, or other numbers of one kind.</summary>
internal sealed class Figures
{
    private readonly List<double> taken = [];

    /// <summary>How often it was measured.</summary>
    public int Count => taken.Count;

    /// <summary>Adds a time.</summary>
    /// <param name="time">The time.</param>
    public void Add(TimeSpan time) => taken.Add(time.TotalMilliseconds);

    /// <summary>Adds a bare number, such as a ratio of two times.</summary>
    /// <param name="value">The number.</param>
    public void Add(double value) => taken.Add(value);

    /// <summary>The time that a share of them stayed under or met.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    /// <returns>Milliseconds; 0 where nothing was measured.</returns>
    public double At(double share) => taken.Count == 0 ? 0 : taken.Order().ElementAt((int)Math.Ceiling(share * (taken.Count - 1)));

    /// <summary>How many of them took longer than a limit.</summary>
    /// <param name="milliseconds">The limit.</param>
    public int Over(double milliseconds) => taken.Count(time => time > milliseconds);
}
