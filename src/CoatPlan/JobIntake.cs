using CoatPlan.Climate;
using CoatPlan.Composition;
using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Presets;
using CoatPlan.Problems;
using CoatPlan.Supplies;

namespace CoatPlan;

/// <summary>From the text of a job file to a job that can be planned, or everything that is wrong with it.</summary>
public static class JobIntake
{
    /// <summary>Reads and checks a job file and the forecast that it names.</summary>
    /// <param name="document">The file.</param>
    /// <param name="fileName">Its name, as problems shall call it.</param>
    /// <param name="trade">What the trade knows.</param>
    /// <param name="readForecast">From the path of a forecast, as the job writes it, to its text or why it cannot be read; not called for other weather.</param>
    /// <param name="before">The job before a change of its text: what the change leaves as it is need not be worked out again. Null for none; the plan is the same.</param>
    public static IntakeResult Read(JobDocument document, string fileName, Trade trade, Func<string, FileText> readForecast, ReadyJob? before = null)
    {
        ArgumentNullException.ThrowIfNull(trade);
        ArgumentNullException.ThrowIfNull(readForecast);

        var reading = JobReader.Read(document, fileName, trade.Catalogue.Vocabulary);
        // The forecast that a job with mistakes names is looked at all the same: what is wrong with it is told in the same go.
        if (reading.Job is not { } read)
            return new IntakeResult(null, [.. reading.Problems, .. reading.Weather is { } named ? Forecast(named, fileName, readForecast, null).Reading.Problems : []]);

        before = before?.Sections is not null && ReferenceEquals(before.Trade, trade) ? before : null;
        var job = before is null ? read : Unchanged(read, reading.Sections!, before);
        var labels = before is not null && job.Products == before.Job.Products && job.TestPanels == before.Job.TestPanels
            ? new LabelsReading(before.Labels, [])
            : Labels.Resolve(job, trade.Catalogue, fileName);
        var (forecast, forecastText) = Forecast(job.Place.Weather, fileName, readForecast, before);
        ImmutableArray<Problem> problems = [.. labels.Problems, .. forecast.Problems];
        return labels.Labels is { } known && problems.IsEmpty
            ? new IntakeResult(new ReadyJob(job, known, forecast.Forecast, trade, before) { Sections = reading.Sections, ForecastText = forecastText }, [])
            : new IntakeResult(null, problems);
    }

    /// <summary>What a job has on the shelf or among its prices that counts for nothing, as its plan warns of it; told without planning.</summary>
    /// <param name="ready">The job, read and checked.</param>
    public static ImmutableArray<PlanWarning> CountsForNothing(ReadyJob ready)
    {
        ArgumentNullException.ThrowIfNull(ready);
        return PlanWarnings.Of([.. PaintSupplies.Warnings(ready.Job.Have, ready.Labels), .. Consumables.Warnings(ready.Job, ready.Trade.Catalogue)]);
    }

    // What stands in the file as it did is the very object that was read before: two jobs can then be compared part by part.
    private static Job Unchanged(Job read, JobSections sections, ReadyJob before)
    {
        var was = before.Job;
        return read with
        {
            Place = IsAsBefore("place") ? was.Place : read.Place,
            Crew = IsAsBefore("crew") ? was.Crew : read.Crew,
            Products = IsAsBefore("products") ? was.Products : read.Products,
            Systems = IsAsBefore("systems") ? was.Systems : read.Systems,
            Surfaces = IsAsBefore("surfaces") ? was.Surfaces : read.Surfaces,
            Have = IsAsBefore("have") ? was.Have : read.Have,
            TestPanels = IsAsBefore("test-panels") ? was.TestPanels : read.TestPanels,
            Prices = IsAsBefore("prices") ? was.Prices : read.Prices,
            Checks = IsAsBefore("checks") ? was.Checks : read.Checks,
        };

        bool IsAsBefore(string key) => sections.IsAsIn(before.Sections!, key);
    }

    private static (ForecastReading Reading, string? Text) Forecast(Weather weather, string fileName, Func<string, FileText> readForecast, ReadyJob? before)
    {
        if (weather is not HourlyWeather hourly)
            return (new ForecastReading(null, []), null);

        var file = readForecast(hourly.Path);
        if (file.Text is not { } text)
            return (new ForecastReading(null, [Sentences.NoForecast(hourly.Path, file.WhyNot).At(hourly.Mark) with { File = fileName }]), null);
        if (before?.Forecast is not null && before.Job.Place.Weather is HourlyWeather { Path: var path } && path == hourly.Path && before.ForecastText == text)
            return (new ForecastReading(before.Forecast, []), text);

        return (HourlyForecast.Read(text, hourly.Path), text);
    }
}
