using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Problems;

namespace CoatPlan;

/// <summary>From the text of a job file to a job that can be planned, or everything that is wrong with it.</summary>
public static class JobIntake
{
    /// <summary>Reads and checks a job file and the forecast that it names.</summary>
    /// <param name="text">What is in the file.</param>
    /// <param name="fileName">Its name, as problems shall call it.</param>
    /// <param name="trade">What the trade knows.</param>
    /// <param name="readForecast">From the path of a forecast, as the job writes it, to its text or why it cannot be read; not called for other weather.</param>
    public static IntakeResult Read(string text, string fileName, Trade trade, Func<string, FileText> readForecast)
    {
        ArgumentNullException.ThrowIfNull(trade);
        ArgumentNullException.ThrowIfNull(readForecast);

        var reading = JobReader.Read(text, fileName, trade.Catalogue.Vocabulary);
        if (reading.Job is not { } job)
            return new IntakeResult(null, reading.Problems);

        var labels = Labels.Resolve(job, trade.Catalogue, fileName);
        var forecast = Forecast(job.Place.Weather, fileName, readForecast);
        ImmutableArray<Problem> problems = [.. labels.Problems, .. forecast.Problems];
        return labels.Labels is { } known && problems.IsEmpty
            ? new IntakeResult(new ReadyJob(job, known, forecast.Forecast, trade), [])
            : new IntakeResult(null, problems);
    }

    private static ForecastReading Forecast(Weather weather, string fileName, Func<string, FileText> readForecast)
    {
        if (weather is not HourlyWeather hourly)
            return new ForecastReading(null, []);

        var file = readForecast(hourly.Path);
        return file.Text is { } text
            ? HourlyForecast.Read(text, hourly.Path)
            : new ForecastReading(null, [Sentences.NoForecast(hourly.Path, file.WhyNot).At(hourly.Mark) with { File = fileName }]);
    }
}
