using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Obstacles;

/// <summary>What a job asks of its plan: everything that a trial may leave out or change.</summary>
/// <param name="Job">The job.</param>
/// <param name="Labels">The labels of its products.</param>
/// <param name="Figures">What decides when weather permits work.</param>
/// <param name="Forecast">The forecast that it names; null where its weather is steady or daily.</param>
public sealed record Ask(Job Job, Labels Labels, ClimateFigures Figures, HourlyForecast? Forecast)
{
    /// <summary>The same with one label changed.</summary>
    internal Ask With(string product, Func<Label, Label> change) =>
        this with { Labels = new Labels([.. Labels.All.Select(label => label.Key == product ? change(label) : label)]) };
}
