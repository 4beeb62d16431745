using System.Text;
using CoatPlan.App;
using CoatPlan.App.Screens;
using CoatPlan.Sheets.Calendar;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Csv;
using CoatPlan.Sheets.Html;
using CoatPlan.Sheets.Pdf;
using CoatPlan.Sheets.Text;
using CoatPlan.Tests.Commands;
using UglyToad.PdfPig;

namespace CoatPlan.Tests.Security;

/// <summary>A job full of names that would steer a terminal, ring its bell, rewrite its title or turn the direction of a line, through everything that is printed.</summary>
public sealed class NamesThatSteer : IDisposable
{
    // As YAML escapes: the text of the file itself is plain.
    private const string Nasty = @"Bay\e[31m\e]0;t\a\x9b2J\u202eoht\u2066\0\b\x7f\r\n\u2028\u2029=end";

    private const string Raw = "Bay\e[31m\e]0;t\a\u009b2J\u202eoht\u2066\b\u007f\u2028=end";

    private readonly TempFolder folder = new();

    private readonly string path;

    public NamesThatSteer() => path = folder.File("a.job.yaml", """
        coatplan: 1
        job: "NASTY"
        start: 2027-05-14 16:00
        finish-by: 2027-05-14 17:00
        place: {volume: 100 m3, exhaust: 20 m3/min, ignition: ["NASTY"], weather: {steady: {air: 70 °F, humidity: 40 %}}}
        crew: {people: 1, hours: {Fri: 16:00-21:00, Sat-Sun: 08:00-18:00}}
        products:
          "blackNASTY": {preset: underhood-black-aerosol, name: "NASTY", label-says: ["NASTY"], solvents: {acetone: 30 %}}
        systems:
          "allNASTY": [{product: "blackNASTY", coats: 2}]
        surfaces:
          - {name: "Inner NASTY", count: 2, material: steel, finish: factory paint, condition: [chips], area: 8 ft2, system: "allNASTY", mask: [{what: "NASTY", kind: wiring, edge: 6 ft}]}
          - {name: "NASTY", material: zinc-plated steel, finish: bare, area: 1 ft2, system: "allNASTY"}
        prices: {labour: 85 /h}

        """.Replace("NASTY", Nasty, StringComparison.Ordinal));

    [Fact]
    public void The_job_is_read_and_planned() => CommandRun.Of("check", path).ExitCode.ShouldBe(0);

    [Theory]
    [InlineData("plan", "JOB")]
    [InlineData("plan", "JOB", "--json")]
    [InlineData("check", "JOB")]
    [InlineData("when", "JOB")]
    [InlineData("when", "JOB", "--json")]
    [InlineData("chance", "JOB", "--draws", "3")]
    [InlineData("chance", "JOB", "--draws", "3", "--json")]
    [InlineData("compare", "JOB", "JOB")]
    [InlineData("compare", "JOB", "JOB", "--json")]
    [InlineData("explain", "JOB", "quote")]
    [InlineData("explain", "JOB", "quote", "--json")]
    [InlineData("explain", "JOB", "supplies[0].cans")]
    [InlineData("explain", "JOB", "no such thing")]
    [InlineData("done", "JOB", "no-such-step", "--at", "16:30")]
    [InlineData("done", "JOB", "STEP", "--at", "16:30", "--note", "NASTY")]
    [InlineData("done", "JOB", "NASTY", "--at", "NASTY")]
    [InlineData("plan", "NASTY")]
    [InlineData("plan", "--NASTY", "JOB")]
    [InlineData("plan", "JOB", "--width", "NASTY")]
    [InlineData("plan", "JOB", "--presets", "NASTY")]
    [InlineData("sheets", "JOB", "--to", "OUT")]
    [InlineData("presets", "NASTY")]
    [InlineData("explain", "JOB", "NASTY")]
    [InlineData("NASTY")]
    [InlineData("open", "NASTY")]
    public void No_command_prints_them_raw(params string[] arguments)
    {
        var step = arguments.Contains("STEP") ? SecondStep() : "";

        var run = CommandRun.Of([.. arguments.Select(argument => argument
            .Replace("JOB", path, StringComparison.Ordinal)
            .Replace("STEP", step, StringComparison.Ordinal)
            .Replace("OUT", folder.File("out\e[31m"), StringComparison.Ordinal)
            .Replace("NASTY", Raw, StringComparison.Ordinal))]);

        run.ExitCode.ShouldBeOneOf(0, 2, 3);
        (run.Output + run.Errors).ShouldNotBeEmpty();
        Steering(run.Output).ShouldBeEmpty();
        Steering(run.Errors).ShouldBeEmpty();
    }

    [Fact]
    public void Problems_show_them_as_marks()
    {
        var broken = folder.File("b.job.yaml", File.ReadAllText(path).Replace("material: steel", $"material: \"{Nasty}\"", StringComparison.Ordinal));

        var run = CommandRun.Of("check", broken);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem();
        Steering(run.Errors).ShouldBeEmpty();
    }

    [Fact]
    public void No_sheet_calendar_page_or_list_holds_them_raw()
    {
        var plan = Plan();
        var sheets = SheetSet.Of(plan);

        foreach (var sheet in sheets)
        {
            Steering(TextSheet.Write(sheet)).ShouldBeEmpty();
            using var document = PdfDocument.Open(PdfSheet.Write(sheet, PaperSize.A4, plan.Start));
            Steering(document.Information.Title ?? "").ShouldBeEmpty();
            Steering(string.Concat(document.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value))).ShouldBeEmpty();
        }

        Steering(HtmlPage.Write(plan.Job, sheets)).ShouldBeEmpty();
        Steering(PlanCalendar.Write(plan)!.Replace("\r\n", "\n", StringComparison.Ordinal)).ShouldBeEmpty();
        Steering(ShoppingList.Write(plan).Replace("\r\n", "\n", StringComparison.Ordinal)).ShouldBeEmpty();
        Steering(StepList.Write(plan).Replace("\r\n", "\n", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    [Fact]
    public void A_page_runs_nothing_that_a_name_brings()
    {
        var plan = Plan() with { Job = "<script>alert(1)</script>\"'><img src=x onerror=alert(1)>" };

        var html = HtmlPage.Write(plan.Job, SheetSet.Of(plan));

        html.ShouldNotContain("<script");
        html.ShouldNotContain("<img");
        html.ShouldContain("&lt;script&gt;");
    }

    [Theory]
    [InlineData("\e")]
    [InlineData("\u009b")]
    [InlineData("\u202e")]
    [InlineData("\u2066")]
    [InlineData("\ud800")]
    [InlineData("a\udc00")]
    public void No_screen_draws_them(string text)
    {
        var canvas = new Canvas(20, 1);

        canvas.Write(0, 0, $"a{text}b", Ink.Plain);

        Steering(canvas.ToString()!).ShouldBeEmpty();
        canvas.Line(0).ShouldContain("b");
    }

    public void Dispose() => folder.Dispose();

    private Plan Plan() => Planner.Plan(JobSource.Open(Quiet(), path, Sources.Usual).Ready, CoatPlan.Timetable.SearchDepth.Quick);

    private string SecondStep() => Plan().Steps[1].Id;

    private static Surroundings Quiet() => new()
    {
        Out = TextWriter.Null,
        Error = TextWriter.Null,
        OpenInput = () => Stream.Null,
        InputIsTerminal = false,
        OutputIsTerminal = false,
    };

    // Every character that moves a cursor, starts a sequence, or changes the direction of what follows.
    private static string Steering(string text) => string.Join(' ', text.EnumerateRunes()
        .Where(rune => (Rune.IsControl(rune) && rune.Value != '\n') || rune.Value is >= 0x202A and <= 0x202E or >= 0x2066 and <= 0x2069 or 0x2028 or 0x2029)
        .Select(rune => $"U+{rune.Value:X4}").Distinct());
}
