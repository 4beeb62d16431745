using CoatPlan.App.Commands;
using CoatPlan.Jobs;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Commands;

public sealed class PlanTextTests
{
    private static readonly TextStyle Style = new(PrintUnits.Us, "USD", 80, Emphasis: false);

    [Fact]
    public void No_line_is_wider_than_the_page()
    {
        foreach (var width in new[] { 40, 57, 80, 120 })
            PlanText.Lines(SamplePlan.Weekend(), Style with { Width = width }).ShouldAllBe(line => line.Length <= width);
    }

    [Fact]
    public void The_head_says_what_it_comes_to()
    {
        var text = Text(SamplePlan.Weekend());

        text.ShouldContain("Finish       Sun 16 May 15:05; asked by Sun 16 May 20:00: met");
        text.ShouldContain("In service   Sun 16 May 21:40");
        text.ShouldContain("Cans         4, of which 3 to buy: 28.50 USD");
        text.ShouldContain("Warnings     1");
    }

    [Fact]
    public void Steps_stand_under_their_day_with_clock_times_hands_and_waits()
    {
        var text = Text(SamplePlan.Weekend());

        text.ShouldContain("Saturday 15 May 2027");
        text.ShouldContain("working hours 08:00-12:00, 13:00-18:00");
        text.ShouldContain("[ ] 13:30-13:46  Satin black, coat 2 of 3");
        text.ShouldContain("16 min of spraying; Inner fender (2), Battery tray");
        text.ShouldContain("not before 13:30: recoat time of “Satin black, coat 1 of 3”");
        text.ShouldContain("not after 14:00:");
        text.ShouldContain("last safe start: 14:00");
        text.ShouldContain("why: The film the label asks for");
    }

    [Fact]
    public void It_ends_with_what_wins_over_it()
    {
        var lines = PlanText.Lines(SamplePlan.Weekend(), Style with { Width = 200 });

        lines[^1].ShouldContain("label and safety data sheet win over this plan");
    }

    [Fact]
    public void Metric_jobs_print_metric_figures()
    {
        var text = Text(SamplePlan.Weekend(), Style with { Units = PrintUnits.Metric, Width = 200 });

        text.ShouldContain("0.78 m² a piece");
        text.ShouldContain("°C");
        text.ShouldNotContain("°F");
        text.ShouldNotContain(" ft");
    }

    [Fact]
    public void A_plan_that_cannot_be_says_why_before_anything_else()
    {
        var text = Text(SamplePlan.TooLate());

        text.ShouldContain("missed");
        text.IndexOf("There is no plan that meets what was asked", StringComparison.Ordinal)
            .ShouldBeLessThan(text.IndexOf("Surfaces", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_placed_is_said()
    {
        Text(SamplePlan.Nothing()).ShouldContain("Finish       nothing could be placed");
    }

    [Fact]
    public void Headings_are_bold_only_where_emphasis_is_asked_for()
    {
        Text(SamplePlan.Weekend()).ShouldNotContain('\e');
        Text(SamplePlan.Weekend(), Style with { Emphasis = true }).ShouldContain("\e[1mSurfaces\e[22m");
    }

    [Fact]
    public void A_name_with_terminal_commands_in_it_prints_none()
    {
        Text(SamplePlan.Weekend() with { Job = "Bay\e[2J\a" }).ShouldNotContain('\e');
    }

    [Fact]
    public void The_machines_culture_changes_nothing()
    {
        var here = Text(SamplePlan.Weekend());
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = System.Globalization.CultureInfo.GetCultureInfo("de-DE");
        try
        {
            Text(SamplePlan.Weekend()).ShouldBe(here);
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    private static string Text(Plan plan, TextStyle? style = null) => string.Join('\n', PlanText.Lines(plan, style ?? Style));
}
