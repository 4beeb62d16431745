using System.Text.RegularExpressions;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Pdf;
using CoatPlan.Tests.Plans;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace CoatPlan.Tests.Sheets;

public class SheetsOnPaper
{
    private const double Margin = 28;

    // Points.
    private const double Touch = 1.2;

    [Theory]
    [InlineData(1, PaperSize.Letter)]
    [InlineData(1, PaperSize.A4)]
    [InlineData(200, PaperSize.Letter)]
    [InlineData(200, PaperSize.A4)]
    public void Every_letter_lies_inside_the_margins_and_over_no_other(int surfaces, PaperSize paper) => Inspect(SheetSet.Of(SheetSamples.Many(surfaces)), paper);

    [Theory]
    [InlineData(1, PaperSize.A4)]
    [InlineData(200, PaperSize.Letter)]
    public void Every_letter_of_a_class_lies_inside_the_margins_and_over_no_other(int surfaces, PaperSize paper) =>
        Inspect([StationSheet.Of(SheetSamples.ManyAtStations(surfaces))!, TagSheet.Of(SheetSamples.ManyAtStations(surfaces))!, WorkSheet.Of(SheetSamples.ManyAtStations(surfaces))], paper);

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void Every_letter_of_the_examples_lies_inside_the_margins_and_over_no_other(PaperSize paper)
    {
        foreach (var plan in (Plan[])[SheetSamples.Roadster(), SheetSamples.Van(), SheetSamples.Class()])
            Inspect(SheetSet.Of(plan), paper);
    }

    [Fact]
    public void No_name_is_cut_short_on_paper()
    {
        var plan = SheetSamples.Many(10);
        foreach (var sheet in SheetSet.Of(plan).Where(sheet => sheet.Name is "work" or "masking-and-safety" or "quote" or "tags"))
        {
            // A line that was broken inside of a word is one word again.
            var words = string.Concat(SheetSamples.Pages(sheet, PaperSize.Letter).SelectMany(page => page.Letters).Select(letter => letter.Value)).Replace(" ", "", StringComparison.Ordinal);
            foreach (var surface in plan.Surfaces.Where(surface => sheet.Name != "tags" || surface.Tag is not null).Where(surface => !surface.Name.StartsWith('ق')))
                words.ShouldContain(surface.Name.Replace(" ", "", StringComparison.Ordinal), customMessage: sheet.Name);
        }
    }

    [Theory]
    [InlineData(PaperSize.Letter, 612, 792)]
    [InlineData(PaperSize.A4, 595, 842)]
    public void The_weekend_hangs_on_the_wall_as_one_page(PaperSize paper, double width, double height)
    {
        var pages = SheetSamples.Pages(SafetySheet.Of(SheetSamples.Roadster()), paper);

        pages.Length.ShouldBe(1);
        pages[0].Width.ShouldBe(width, 1);
        pages[0].Height.ShouldBe(height, 1);
    }

    [Fact]
    public void Every_number_on_paper_is_in_the_text()
    {
        foreach (var sheet in SheetSet.Of(SheetSamples.Roadster()))
        {
            var text = SheetSamples.Text(sheet);
            var body = Regex.Replace(SheetSamples.Words(SheetSamples.Pages(sheet, PaperSize.Letter)), @"page \d+ of \d+", "");
            var known = Regex.Matches(text, @"\d+").Select(match => match.Value).ToHashSet();
            Regex.Matches(body, @"\d+").Select(match => match.Value).Where(number => !known.Contains(number)).ShouldBeEmpty();
        }
    }

    [Fact]
    public void Every_sheet_ends_with_the_deferral()
    {
        var plan = SheetSamples.Roadster();
        foreach (var sheet in SheetSet.Of(plan))
            sheet.Blocks[^1].ShouldBe(new Closing(plan.Cautions[^1].Text));
    }

    [Fact]
    public void No_caution_is_lost_between_the_sheets()
    {
        var plan = SheetSamples.Roadster();
        var words = string.Concat(SheetSet.Of(plan).Select(sheet => SheetSamples.Text(sheet)));
        var flat = Regex.Replace(words, @"\s+", " ");

        foreach (var caution in plan.Cautions)
            flat.ShouldContain(Regex.Replace(caution.Text, @"\s+", " "));
    }

    [Fact]
    public void The_work_sheet_has_a_box_to_tick_for_each_step()
    {
        var plan = SamplePlan.Weekend();
        Regex.Count(SheetSamples.Text(WorkSheet.Of(plan)), @"^\[ \]", RegexOptions.Multiline).ShouldBe(plan.Steps.Length);
    }

    [Fact]
    public void A_plan_that_misses_what_was_asked_says_so_first()
    {
        var blocks = WorkSheet.Of(SamplePlan.TooLate()).Blocks;

        blocks[0].ShouldBeOfType<Notice>();
        blocks[1].ShouldBeOfType<Bullets>().Items.ShouldBe(SamplePlan.TooLate().Reasons);
    }

    [Fact]
    public void The_respirator_stands_in_the_frame() =>
        SafetySheet.Of(SamplePlan.Weekend()).Blocks.OfType<Notice>().Single().Text.ShouldBe(SamplePlan.Weekend().Respirator.Kind);

    [Fact]
    public void A_name_cannot_steer_a_terminal()
    {
        var plan = SamplePlan.Weekend() with { Job = "bay\u001b[31m\u0007\u009b2J" };
        foreach (var sheet in SheetSet.Of(plan))
        {
            SheetSamples.Text(sheet).Where(letter => char.IsControl(letter) && letter != '\n').ShouldBeEmpty();
            SheetSamples.Words(SheetSamples.Pages(sheet, PaperSize.A4)).Any(char.IsControl).ShouldBeFalse();
        }
    }

    [Fact]
    public void Text_lines_are_at_most_80_columns()
    {
        foreach (var sheet in SheetSet.Of(SheetSamples.Many(200)))
            SheetSamples.Text(sheet).Split('\n').Max(line => new System.Globalization.StringInfo(line).LengthInTextElements).ShouldBeLessThanOrEqualTo(80);
    }

    [Fact]
    public void The_document_has_a_title_and_an_outline()
    {
        using var document = PdfDocument.Open(PdfSheet.Write(WorkSheet.Of(SamplePlan.Weekend()), PaperSize.A4, SamplePlan.At(14, 16, 0)));

        document.Information.Title.ShouldBe("Work: Roadster engine bay");
        document.TryGetBookmarks(out var bookmarks).ShouldBeTrue();
        bookmarks.GetNodes().ShouldNotBeEmpty();
    }

    [Fact]
    public void Every_kind_of_block_is_drawn_by_each_renderer()
    {
        Block[] each =
        [
            new Heading("h"), new Paragraph("p"), new Notice("n"), new Bullets(["b"]), new Grid([new Column("c", 1)], [["x"]]),
            new WorkStep("w", "t", "", [], []), new Columns([new Paragraph("q")]), new NewPage("page"), new Closing("z"), new Blanks(["name"]), new Tags([new Tag("1", "tag", ["line"], ["bag"])]),
            TimelineSheet.Of(SamplePlan.Weekend()).Blocks.OfType<Timeline>().Single(),
        ];
        var kinds = typeof(Block).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Block)));
        each.Select(block => block.GetType()).ShouldBe(kinds, ignoreOrder: true);

        var sheet = new Sheet("s", "S", "J", [.. each]);
        SheetSamples.Text(sheet).ShouldNotBeEmpty();
        SheetSamples.Pages(sheet, PaperSize.A4).ShouldNotBeEmpty();
        CoatPlan.Sheets.Html.HtmlPage.Write("J", [sheet]).ShouldNotBeEmpty();
    }

    private static void Inspect(ImmutableArray<Sheet> sheets, PaperSize paper)
    {
        foreach (var sheet in sheets)
        {
            foreach (var page in SheetSamples.Pages(sheet, paper))
            {
                var letters = page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).OrderBy(letter => letter.BoundingBox.Left).ToArray();
                letters.ShouldNotBeEmpty();
                foreach (var (box, value) in letters.Select(letter => (letter.BoundingBox, letter.Value)))
                {
                    var isInside = box.Left >= Margin - 1 && box.Right <= page.Width - Margin + 1 && box.Bottom >= Margin - 10 && box.Top <= page.Height - Margin + 1;
                    isInside.ShouldBeTrue($"{sheet.Name}, page {page.Number}: “{value}” at {box}");
                }

                Over(letters).ShouldBeEmpty($"{sheet.Name}, page {page.Number}");
            }
        }
    }

    // The letters' own outlines; neighbours in a word may touch.
    private static IEnumerable<string> Over(Letter[] letters)
    {
        for (var i = 0; i < letters.Length; i++)
        {
            var one = letters[i].BoundingBox;
            for (var j = i + 1; j < letters.Length && letters[j].BoundingBox.Left < one.Right - Touch; j++)
            {
                var other = letters[j].BoundingBox;
                if (Math.Min(one.Right, other.Right) - other.Left > Touch && Math.Min(one.Top, other.Top) - Math.Max(one.Bottom, other.Bottom) > Touch)
                    yield return $"“{letters[i].Value}” and “{letters[j].Value}” at {other}";
            }
        }
    }
}
