using System.Text.RegularExpressions;
using System.Xml.Linq;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Html;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Sheets;

public class HtmlPageTests
{
    private const string Hostile = "<script>alert(1)</script>\"'><img src=x onerror=y> & ]]>\u001b";

    [Fact]
    public void Every_word_of_the_sheets_as_text_is_on_the_page()
    {
        foreach (var plan in (Plan[])[SheetSamples.Roadster(), SheetSamples.Many(12), SamplePlan.Nothing()])
        {
            var text = Squeezed(string.Concat(Page(plan).DescendantNodes().OfType<XText>().Select(node => node.Value + " ")));
            foreach (var sheet in SheetSet.Of(plan))
            {
                foreach (var words in sheet.Blocks.SelectMany(Words))
                    text.ShouldContain(Squeezed(words));
            }
        }
    }

    [Fact]
    public void The_page_loads_and_runs_nothing()
    {
        var page = Page(Named(Hostile));

        page.Descendants().Select(element => element.Name.LocalName).Intersect(["script", "img", "link", "iframe", "object", "form"]).ShouldBeEmpty();
        page.Descendants().Attributes().Where(attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || attribute.Name == "src").ShouldBeEmpty();
        page.Descendants().Attributes("href").ShouldAllBe(link => link.Value.StartsWith('#'));
        page.Descendants("style").Single().Value.ShouldNotContain("url(");
        page.Descendants("style").Single().Value.ShouldNotContain("@import");
    }

    [Fact]
    public void A_name_stays_text()
    {
        var page = Page(Named(Hostile));

        page.Descendants("h1").Single().Value.ShouldBe(PlainText.Of(Hostile));
        page.Descendants("label").First().Value.ShouldEndWith(PlainText.Of(Hostile));
    }

    [Fact]
    public void Each_link_leads_to_its_sheet_and_no_id_stands_twice()
    {
        var page = Page(SamplePlan.Weekend());
        var ids = page.Descendants().Attributes("id").Select(id => "#" + id.Value).ToArray();

        ids.ShouldBeUnique();
        page.Descendants("a").Attributes("href").Select(link => link.Value).ShouldBe(ids);
    }

    [Fact]
    public void Each_step_has_a_box_to_tick() =>
        Page(SamplePlan.Weekend()).Descendants("input").Count().ShouldBe(SamplePlan.Weekend().Steps.Length);

    // The page is written so that a strict reader of XML takes it too.
    private static XDocument Page(Plan plan) => XDocument.Parse(HtmlPage.Write(plan.Job, SheetSet.Of(plan)));

    private static Plan Named(string name)
    {
        var plan = SamplePlan.Weekend();
        return plan with
        {
            Job = name,
            Surfaces = [.. plan.Surfaces.Select(surface => surface with { Name = name })],
            Steps = [.. plan.Steps.Select(step => step with { Title = name, Why = name })],
            Supplies = [.. plan.Supplies.Select(supply => supply with { Name = name })],
            Respirator = plan.Respirator with { Kind = name },
        };
    }

    private static IEnumerable<string> Words(Block block) => block switch
    {
        Heading heading => [heading.Text],
        Paragraph paragraph => [paragraph.Text],
        Notice notice => [notice.Text],
        Bullets bullets => bullets.Items,
        Grid grid => grid.Rows.SelectMany(row => row).Concat(grid.Columns.Select(column => column.Title)),
        Columns columns => columns.Parts.SelectMany(Words),
        WorkStep step => [$"{step.When} {step.Title}", step.Where, .. step.Details, .. step.Readings],
        Closing closing => [closing.Text],
        NewPage page => [page.Head],
        Blanks blanks => blanks.Labels,
        Tags tags => tags.Items.SelectMany(tag => tag.Lines.Concat(tag.Blanks).Prepend(tag.Name).Prepend(tag.Number)),
        Timeline timeline => timeline.Days.Select(day => day.Title),
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "A kind of block."),
    };

    private static string Squeezed(string text) => Regex.Replace(PlainText.Of(text), @"\s+", " ").Trim();
}
