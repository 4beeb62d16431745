using System.Text.Json;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Commands;

public sealed class PlanCommandTests
{
    private static readonly string Weekend = Example("roadster-weekend");

    [Fact]
    public void A_plan_is_printed_in_eighty_columns_and_without_colour()
    {
        var run = CommandRun.WithInput(Desks.SmallJob, "plan", "-");

        run.Errors.ShouldBeEmpty();
        run.ExitCode.ShouldBe(0);
        run.Output.Split('\n').ShouldAllBe(line => line.Length <= 80);
        run.Output.ShouldContain("Finish ");
        run.Output.ShouldNotContain('\e');
    }

    [Fact]
    public void Json_is_the_same_bytes_each_time_and_from_standard_input()
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob);
        var first = CommandRun.Of("plan", job, "--json");
        var again = CommandRun.Of("plan", "--json", job);
        var fromInput = CommandRun.WithInput(Desks.SmallJob, "plan", "-", "--json");

        first.ExitCode.ShouldBe(0);
        again.Output.ShouldBe(first.Output);
        fromInput.Output.ShouldBe(first.Output);
        using var json = JsonDocument.Parse(first.Output);
        json.RootElement.GetProperty("coatplan").GetInt32().ShouldBe(1);
    }

    [Fact]
    public void A_finish_that_cannot_be_met_is_three_with_plan_and_reasons()
    {
        using var folder = new TempFolder();
        var job = folder.File("late.job.yaml", Desks.SmallJob.Replace("start: 2027-05-14 16:00", "start: 2027-05-14 16:00\nfinish-by: 2027-05-14 17:00", StringComparison.Ordinal));

        var run = CommandRun.Of("plan", job);

        run.ExitCode.ShouldBe(3);
        run.Output.ShouldContain("There is no plan that meets what was asked");
        run.ErrorLines.ShouldNotBeEmpty();
    }

    [Fact]
    public void Mistakes_are_found_in_one_go_a_line_each_with_file_line_and_column()
    {
        using var folder = new TempFolder();
        var job = folder.File("bad.job.yaml", File.ReadAllText(Weekend)
            .Replace("people: 1", "people: none", StringComparison.Ordinal)
            .Replace("area: 7 ft2", "area: 7 ft", StringComparison.Ordinal));

        foreach (var command in new[] { "plan", "check" })
        {
            var run = CommandRun.Of(command, job);

            run.ExitCode.ShouldBe(2);
            run.Output.ShouldBeEmpty();
            run.ErrorLines.Count.ShouldBe(2);
            foreach (var line in run.ErrorLines)
                line.ShouldMatch($@"^{System.Text.RegularExpressions.Regex.Escape(job)}:\d+:\d+: .*expected");
        }
    }

    [Fact]
    public void A_file_that_is_not_there_is_bad_input()
    {
        var run = CommandRun.Of("plan", "no-such.job.yaml");

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldBe("no-such.job.yaml: no such file");
    }

    [Fact]
    public void A_folder_is_bad_input()
    {
        using var folder = new TempFolder();

        CommandRun.Of("plan", folder.Path).ErrorLines.ShouldHaveSingleItem().ShouldContain("folder");
    }

    [Fact]
    public void A_binary_file_is_bad_input()
    {
        var run = CommandRun.WithInput([0x89, 0x50, 0x4E, 0x47, 0, 0, 1], "plan", "-");

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem();
    }

    [Fact]
    public void A_file_of_gigabytes_is_refused_after_a_few_megabytes()
    {
        using var endless = new EndlessText();
        var errors = new StringWriter();

        var result = CoatPlan.App.Edge.Run(["plan", "-"], new CoatPlan.App.Surroundings
        {
            Out = new StringWriter(),
            Error = errors,
            OpenInput = () => endless,
            InputIsTerminal = false,
            OutputIsTerminal = false,
        });

        result.ShouldBe(2);
        errors.ToString().ShouldContain("too large");
        endless.Given.ShouldBeLessThan(10_000_000);
    }

    [Fact]
    public void A_forecast_is_looked_for_beside_the_job_file()
    {
        using var folder = new TempFolder();
        var text = File.ReadAllText(Weekend);
        var daily = "daily: {low: 54 °F, high: 74 °F, dew-point: 46 °F}";
        text.ShouldContain(daily);
        var job = folder.File("a.job.yaml", text.Replace(daily, "hours: weather.csv", StringComparison.Ordinal));

        CommandRun.Of("check", job).ErrorLines.ShouldHaveSingleItem().ShouldContain("weather.csv");
        folder.File("weather.csv", "time,air °F,humidity %\n2027-05-14 00:00,70,40\n2027-05-20 00:00,70,40\n");
        CommandRun.Of("check", job).ExitCode.ShouldBe(0);
    }

    [Fact]
    public void Check_says_what_a_job_holds()
    {
        var run = CommandRun.Of("check", Weekend);

        run.ExitCode.ShouldBe(0);
        run.Output.ShouldContain("surfaces");
        run.Output.ShouldContain("nothing wrong");
    }

    [Fact]
    public void Sheets_are_written_as_pdf_and_as_text()
    {
        using var folder = new TempFolder();
        var (first, second) = (folder.File("first"), folder.File("second"));

        var job = folder.File("a.job.yaml", Desks.SmallJob);
        var run = CommandRun.Of("sheets", job, "--to", first);
        CommandRun.Of("sheets", job, "--to", second);

        run.ExitCode.ShouldBe(0);
        var written = run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        written.Length.ShouldBe(Directory.GetFiles(first).Length);
        written.ShouldContain(path => path.EndsWith(".pdf"));
        written.ShouldContain(path => path.EndsWith(".txt"));
        written.ShouldContain(path => path.EndsWith("calendar.ics"));
        written.ShouldContain(path => path.EndsWith("sheets.html"));
        written.Count(path => path.EndsWith(".csv", StringComparison.Ordinal)).ShouldBe(2);
        foreach (var path in written.Where(path => path.EndsWith(".ics", StringComparison.Ordinal) || path.EndsWith(".html", StringComparison.Ordinal)))
            File.ReadAllBytes(path).ShouldBe(File.ReadAllBytes(Path.Combine(second, Path.GetFileName(path))));
        foreach (var path in written.Where(path => path.EndsWith(".txt", StringComparison.Ordinal)))
            File.ReadAllText(path).ShouldBe(File.ReadAllText(Path.Combine(second, Path.GetFileName(path))));
        foreach (var path in written.Where(path => path.EndsWith(".pdf", StringComparison.Ordinal)))
            File.ReadAllText(path).ShouldStartWith("%PDF");
    }

    [Fact]
    public void A_new_job_has_nothing_wrong()
    {
        using var folder = new TempFolder();
        CommandRun.Of("new", folder.File("a.job.yaml"));

        CommandRun.Of("check", folder.File("a.job.yaml")).ExitCode.ShouldBe(0);
    }

    internal static string Example(string name) => Path.Combine(AppContext.BaseDirectory, "presets", "jobs", $"{name}.job.yaml");

    private sealed class EndlessText : Stream
    {
        public long Given { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => Given; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            buffer.AsSpan(offset, count).Fill((byte)'a');
            Given += count;
            return count;
        }

        public override void Flush() => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
