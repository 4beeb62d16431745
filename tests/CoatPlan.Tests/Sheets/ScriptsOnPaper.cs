using System.Text;
using System.Text.RegularExpressions;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Html;
using CoatPlan.Sheets.Pdf;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Plans;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;

namespace CoatPlan.Tests.Sheets;

/// <summary>Names in other scripts on paper: with their letters where the typefaces have them, and with a word about it where not.</summary>
public class ScriptsOnPaper
{
    private const string OneCover = """
        coatplan: 1
        job: Bench
        start: 2027-05-14 09:00
        place: {outdoors: true, weather: {steady: {air: 70 °F, humidity: 50 %}}}
        crew: {people: 1, hours: {Mon-Sun: 08:00-18:00}}
        products: {black: {preset: enamel-aerosol}}
        systems: {plain: [{product: black, coats: 1}]}
        surfaces: [{name: غطاء, id: cover, material: steel, finish: factory paint, area: 1 ft2, system: plain}]
        """;

    private const string Note = "letters that the typefaces of this document lack";

    [Theory]
    [InlineData("Aile intérieure, côté droit")]
    [InlineData("Łódź Ğüçlü Þór Đặng")]
    [InlineData("Крыло внутреннее")]
    [InlineData("Εσωτερικό φτερό")]
    [InlineData("内側フェンダー")]
    [InlineData("冷凝器散热片")]
    [InlineData("ひらがな")]
    [InlineData("앞쪽 프레임")]
    [InlineData("Fender 内側 앞쪽 Крыло")]
    public void A_name_in_letters_that_the_typefaces_have_prints_as_it_is(string name)
    {
        foreach (var sheet in SheetSet.Of(Named(name)))
        {
            var pages = SheetSamples.Pages(sheet, PaperSize.Letter);

            Squeezed(pages).ShouldContain(Squeezed(name), customMessage: sheet.Name);
            EmptyBoxes(pages).ShouldBe(0, sheet.Name);
            Squeezed(pages).ShouldNotContain(Squeezed(Note));
            PdfSheet.Substitutes(sheet).ShouldBeEmpty();
        }
    }

    [Fact]
    public void Marks_on_letters_print_as_one_letter_with_them_and_steering_characters_not_at_all() =>
        Squeezed(SheetSamples.Pages(ShoppingSheet.Of(Named("co\u0302te\u0301 \u200Bdroit\u00AD")), PaperSize.A4)).ShouldContain("côtédroit");

    [Theory]
    [InlineData("قوس أمامي")]
    [InlineData("צופר")]
    [InlineData("काला")]
    [InlineData("ฝากระโปรง")]
    [InlineData("😀👩‍🔧")]
    [InlineData("𓀀")]
    public void A_name_in_other_letters_gives_way_to_what_is_told_on_every_page(string name)
    {
        var plan = Named(name);
        foreach (var sheet in SheetSet.Of(plan))
        {
            var pages = SheetSamples.Pages(sheet, PaperSize.Letter);

            EmptyBoxes(pages).ShouldBe(0, sheet.Name);
            foreach (var page in pages)
                SheetSamples.Words([page]).ShouldContain(Note);
            PdfSheet.Substitutes(sheet).ShouldNotBeEmpty(sheet.Name);
            SheetSamples.Text(sheet).ShouldContain(name, customMessage: sheet.Name);
        }

        SheetSamples.Words(SheetSamples.Pages(WorkSheet(plan), PaperSize.Letter)).ShouldContain("inner-fender (2)");
        HtmlPage.Write(plan.Job, SheetSet.Of(plan)).ShouldContain(System.Net.WebUtility.HtmlEncode(name));
    }

    [Fact]
    public void A_name_whose_identifier_is_no_better_gives_way_to_its_place_in_the_job_file()
    {
        var plan = Named("قوس");
        var sheet = WorkSheet(plan with { Surfaces = [plan.Surfaces[0] with { Id = "قوس" }, plan.Surfaces[1]], Steps = [.. plan.Steps.Select(step => step with { Surfaces = [.. step.Surfaces.Select(surface => surface == "inner-fender" ? "قوس" : surface)] })] });

        PdfSheet.Substitutes(sheet).ShouldContain(new Substitute("قوس", "surface 1"));
        SheetSamples.Words(SheetSamples.Pages(sheet, PaperSize.A4)).ShouldContain("surface 1 (2)");
    }

    [Fact]
    public void A_name_that_is_mostly_there_keeps_what_is_there()
    {
        var sheet = WorkSheet(Named("Крыло 😀"));

        PdfSheet.Substitutes(sheet).ShouldContain(new Substitute("Крыло 😀", "Крыло ?"));
    }

    [Fact]
    public void Two_names_that_would_print_alike_print_by_their_identifiers()
    {
        var plan = Named("Крыло 😀");
        var sheet = WorkSheet(plan with { Surfaces = [plan.Surfaces[0], plan.Surfaces[1] with { Name = "Крыло 👍" }] });

        PdfSheet.Substitutes(sheet).ShouldContain(new Substitute("Крыло 😀", "inner-fender"));
        PdfSheet.Substitutes(sheet).ShouldContain(new Substitute("Крыло 👍", "battery-tray"));
    }

    [Fact]
    public void A_name_that_two_bear_prints_as_either()
    {
        var plan = Named("قوس");
        var sheet = WorkSheet(plan with { Surfaces = [.. plan.Surfaces.Select(surface => surface with { Name = "قوس" })] });

        PdfSheet.Substitutes(sheet).ShouldContain(new Substitute("قوس", "inner-fender or battery-tray"));
    }

    [Fact]
    public void Only_the_letters_in_use_are_in_the_document_and_only_of_typefaces_in_use()
    {
        var latin = Write(WorkSheet(SamplePlan.Weekend()));
        var all = Write(WorkSheet(Named("Fender 内側 앞쪽 Крыло")));

        Typefaces(latin).ShouldAllBe(name => name.StartsWith("Inter", StringComparison.Ordinal));
        latin.Length.ShouldBeLessThan(80_000);
        Typefaces(all).Select(name => name.Split(' ', ',')[0]).Distinct().ShouldBe(["Inter", "Droid", "NanumGothicCoding"], ignoreOrder: true);
        all.Length.ShouldBeLessThan(200_000);
    }

    [Fact]
    public void The_command_says_what_stands_on_paper_for_which_words()
    {
        using var folder = new TempFolder();
        var path = folder.File("bench.job.yaml", OneCover);

        var run = CommandRun.Of("sheets", path, "--to", folder.Path);

        run.ExitCode.ShouldBe(0);
        run.ErrorLines.ShouldBe(["The typefaces of the PDFs lack the letters of 1 word; the texts and sheets.html have them. On paper stands:", "  cover for غطاء"]);
    }

    private static Plan Named(string name)
    {
        var plan = SamplePlan.Weekend();
        return plan with
        {
            Job = name,
            Surfaces = [plan.Surfaces[0] with { Name = name, Tag = 2 }, plan.Surfaces[1]],
            Supplies = [.. plan.Supplies.Select(supply => supply with { Name = name })],
        };
    }

    private static Sheet WorkSheet(Plan plan) => SheetSet.Of(plan).Single(sheet => sheet.Name == "work");

    private static byte[] Write(Sheet sheet) => PdfSheet.Write(sheet, PaperSize.A4, SamplePlan.At(14, 16, 0));

    // A typeface's first glyph is the box that stands for what it lacks. Source: OpenType 1.9, cmap.
    private static int EmptyBoxes(ImmutableArray<Page> pages) =>
        pages.SelectMany(page => page.Operations).OfType<ShowText>().Sum(shown => shown.Bytes.ToArray().Chunk(2).Count(glyph => glyph.All(one => one == 0)));

    private static IEnumerable<string> Typefaces(byte[] document) =>
        Regex.Matches(Encoding.Latin1.GetString(document), @"/BaseFont/[A-Z]{6}\+([^\s/]+)").Select(match => match.Groups[1].Value.Replace("#20", " ", StringComparison.Ordinal)).Distinct();

    // Words of ideographs are told apart by position alone, and lines break in them.
    private static string Squeezed(ImmutableArray<Page> pages) => Squeezed(SheetSamples.Words(pages));

    private static string Squeezed(string text) => Regex.Replace(text, @"\s+", "").Normalize(NormalizationForm.FormC);
}
