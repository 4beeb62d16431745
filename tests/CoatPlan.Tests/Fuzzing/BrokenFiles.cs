using System.Text;
using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Problems;
using CoatPlan.Tests.Desk;
using CoatPlan.Tests.Jobs;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Fuzzing;

/// <summary>Whatever a file holds, it is read or refused; a refusal says line and column, inside the file, on one line.</summary>
public sealed class BrokenFiles
{
    private const string Csv = "time,air °F,humidity %,wind mph,rain mm\n2027-05-14 16:00,68,52,6,0\n2027-05-14 22:00,57,74,3,0.2\n2027-05-15 05:00,49,90,2,0\n2027-05-20 09:00,58,70,4,0\n";

    private static readonly string[] Jobs = [JobFiles.Complete, JobFiles.EveryKey, Desks.SmallJob, JobFiles.EveryKeyAsJson, .. JobFiles.Examples];

    private static readonly string[] Presets =
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "presets"), "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    private static readonly string Epw = Typical();

    [Fact]
    public void A_job_of_broken_bytes() => Fuzz.Run(300, [], random =>
    {
        var bytes = Breaking.Bytes(random, Pick(random, Jobs), Pick(random, Jobs));
        var job = JobText.FromBytes(bytes, "x.job.yaml");
        if (job.Problems.IsEmpty)
            Read(job.Text);
        else
            Told(job.Problems, Encoding.UTF8.GetString(bytes));
    });

    [Fact]
    public void A_job_of_broken_grammar() => Fuzz.Run(400, [], random => Read(Breaking.Text(random, Pick(random, Jobs), Pick(random, Jobs))));

    [Fact]
    public void A_job_that_reads_is_planned_or_has_reasons() => Fuzz.Run(40, [], random =>
    {
        var text = Breaking.Text(random, Desks.SmallJob, JobFiles.Complete);
        if (Read(text).Ready is not { } ready || ready.Job.Surfaces.Sum(surface => surface.Count) > 1000)
            return;

        var plan = Planner.Plan(ready, SearchDepth.Quick);
        (plan.Finish is not null || !plan.Reasons.IsEmpty).ShouldBeTrue();
        PlanJson.Write(plan).ShouldNotBeEmpty();
    });

    [Fact]
    public void A_preset_file() => Fuzz.Run(60, [], random =>
    {
        var text = Breaking.Text(random, Pick(random, Presets), Pick(random, Presets));
        var reading = Trade.Read([new PresetText("x.yaml", text)]);
        (reading.Trade is null).ShouldBe(!reading.Problems.IsEmpty);
        Told(reading.Problems.Where(problem => problem.File == "x.yaml"), text);
    });

    [Fact]
    public void A_forecast_of_hours() => Fuzz.Run(1000, [], random => Forecast(Breaking.Text(random, Csv, Csv)));

    [Fact]
    public void A_typical_year() => Fuzz.Run(60, [], random => Forecast(Breaking.Text(random, Epw, Csv)));

    private static IntakeResult Read(string text)
    {
        var reading = JobIntake.Read(text, "x.job.yaml", Trade.Standard, _ => FileText.Of(Csv));
        (reading.Ready is null).ShouldBe(!reading.Problems.IsEmpty);
        Told(reading.Problems.Where(problem => problem.File == "x.job.yaml"), text);
        return reading;
    }

    private static void Forecast(string text)
    {
        var reading = HourlyForecast.Read(text, "x.csv");
        (reading.Forecast is null).ShouldBe(!reading.Problems.IsEmpty);
        Told(reading.Problems, text);
    }

    private static void Told(IEnumerable<Problem> problems, string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n').Length + 1;
        foreach (var problem in problems)
        {
            problem.Line.ShouldBeInRange(1, lines);
            problem.Column.ShouldBeInRange(1, text.Length + 2);
            problem.Message.ShouldNotBeEmpty();
            problem.ToString().ShouldNotContain('\n');
            problem.ToString().ShouldStartWith($"{problem.File}:{problem.Line}:{problem.Column}: ");
        }
    }

    private static string Pick(Random random, string[] texts) => texts[random.Next(texts.Length)];

    private static string Typical()
    {
        var year = new StringBuilder("LOCATION,Somewhere,-,-,SRC,000000,40.0,-100.0,-7.0,300.0\nDESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1,x\nCOMMENTS 2,x\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n");
        for (var day = 1; day <= 31; day++)
        {
            for (var hour = 1; hour <= 24; hour++)
                year.Append(System.Globalization.CultureInfo.InvariantCulture, $"2005,1,{day},{hour},0,A7A7,{10 + (hour / 2.0):0.0},{5.0:0.0},60,98000,0,0,300,0,0,0,0,0,0,0,180,2.1,5,5,20,77777,9,999999999,100,0.1,0,88,0.2,0.0,1.0\n");
        }

        return year.ToString();
    }
}
