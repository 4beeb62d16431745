using System.Globalization;
using System.Text;
using CoatPlan.App.Commands;
using CoatPlan.Jobs;
using CoatPlan.Sheets.Calendar;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Csv;
using CoatPlan.Sheets.Html;
using CoatPlan.Sheets.Text;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Faults;

/// <summary>Where a machine writes numbers, days and letters another way, a job is read, planned and printed byte for byte the same.</summary>
public sealed class EveryCulture
{
    // A comma for the point; an i whose capital has a dot; another calendar, and marks of direction beside a minus sign.
    private static readonly string[] Cultures = ["de-DE", "tr-TR", "ar-SA"];

    public static TheoryData<string> Examples => ["roadster-weekend", "van-quote", "class-panels"];

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_is_planned_and_printed_the_same(string name)
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "jobs", $"{name}.job.yaml"));

        var plain = Printed("", text);

        foreach (var culture in Cultures)
        {
            // A culture that the machine does not know would make the test say nothing.
            CultureInfo.GetCultureInfo(culture, predefinedOnly: true).Name.ShouldBe(culture);
            Printed(culture, text).ShouldBe(plain, customMessage: culture);
        }
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Words_in_capitals_and_figures_are_read_the_same(string culture) => In(culture, () =>
    {
        var text = Desk.Desks.SmallJob
            .Replace("material: steel", "material: STAINLESS STEEL", StringComparison.Ordinal)
            .Replace("condition: [chips, oily]", "condition: [CHIPS, WHITE CORROSION]", StringComparison.Ordinal)
            .Replace("area:   8 ft2", "area: 1,008.5 in2", StringComparison.Ordinal);

        var reading = JobReader.Read(text, "x", Vocabulary.Contract);

        reading.Problems.ShouldBeEmpty();
        reading.Job!.Surfaces[0].Material.ShouldBe("stainless steel");
        reading.Job.Surfaces[0].Area!.Value.SquareInches.ShouldBe(1008.5, 1e-6);
        return "";
    });

    private static string Printed(string culture, string text) => In(culture, () =>
    {
        var ready = JobIntake.Read(text, "job", Trade.Standard, _ => FileText.Unreadable("it is not needed")).Ready!;
        var plan = Planner.Plan(ready, SearchDepth.Quick);
        var sheets = SheetSet.Of(plan);
        var all = new StringBuilder();
        all.Append(PlanJson.Write(plan));
        all.AppendJoin('\n', PlanText.Lines(plan, new TextStyle(plan.Units, "USD", 80, Emphasis: false)));
        foreach (var sheet in sheets)
            all.Append(TextSheet.Write(sheet));
        all.Append(HtmlPage.Write(plan.Job, sheets));
        all.Append(PlanCalendar.Write(plan));
        all.Append(ShoppingList.Write(plan)).Append(StepList.Write(plan));
        return all.ToString();
    });

    private static string In(string culture, Func<string> say)
    {
        var (before, beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
            return say();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }
}
