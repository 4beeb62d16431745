using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan;

/// <summary>A job that was read and checked against what the trade knows, with all that a plan needs; <see cref="JobIntake"/> makes it.</summary>
public sealed record ReadyJob
{
    internal ReadyJob(Job job, Labels labels, HourlyForecast? forecast, Trade trade) =>
        (Job, Labels, Forecast, Trade) = (job, labels, forecast, trade);

    /// <summary>What the person asked for.</summary>
    public Job Job { get; }

    /// <summary>The labels of its products.</summary>
    public Labels Labels { get; }

    /// <summary>The forecast that it names; null where its weather is steady or daily.</summary>
    public HourlyForecast? Forecast { get; }

    /// <summary>What the trade knows.</summary>
    public Trade Trade { get; }
}
