using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan;

/// <summary>A job that was read and checked against what the trade knows, with all that a plan needs; <see cref="JobIntake"/> makes it.</summary>
public sealed record ReadyJob
{
    /// <summary>A job that was read.</summary>
    /// <param name="job">What the person asked for.</param>
    /// <param name="labels">The labels of its products.</param>
    /// <param name="forecast">The forecast that it names.</param>
    /// <param name="trade">What the trade knows.</param>
    /// <param name="before">The job before a change, of which the plan takes what the change leaves as it is; null for none. The plan is the same with and without.</param>
    internal ReadyJob(Job job, Labels labels, HourlyForecast? forecast, Trade trade, ReadyJob? before = null)
    {
        (Job, Labels, Forecast, Trade) = (job, labels, forecast, trade);
        Groundwork = Groundwork.Of(this, before);
    }

    /// <summary>What the person asked for.</summary>
    public Job Job { get; }

    /// <summary>The labels of its products.</summary>
    public Labels Labels { get; }

    /// <summary>The forecast that it names; null where its weather is steady or daily.</summary>
    public HourlyForecast? Forecast { get; }

    /// <summary>What the trade knows.</summary>
    public Trade Trade { get; }

    /// <summary>What its plans rest on.</summary>
    internal Groundwork Groundwork { get; }

    /// <summary>What its file holds under which key; null where it comes from no file.</summary>
    internal JobSections? Sections { get; init; }

    /// <summary>The text of its forecast; null for none.</summary>
    internal string? ForecastText { get; init; }

    /// <summary>The same job with something changed.</summary>
    /// <param name="job">The job with the change.</param>
    internal ReadyJob With(Job job) => new(job, Labels, Forecast, Trade, before: this);
}
