using System.Text.RegularExpressions;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Pdf;
using UglyToad.PdfPig.Content;

namespace CoatPlan.Tests.Sheets;

/// <summary>No number is on paper that is not in the plan: sheets compute nothing.</summary>
public class NumbersOnPaper
{
    public static TheoryData<string> Examples => ["roadster", "van", "class"];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_number_of_a_sheet_is_a_figure_of_the_plan_with_its_unit(string example)
    {
        var plan = PlanOf(example);
        var phrases = new PlanPhrases(plan);

        SheetSet.Of(plan).SelectMany(sheet => Texts(sheet).Select(phrases.Left).OfType<string>().Select(left => $"{sheet.Name}: {left}")).Distinct().ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_number_that_is_read_back_from_paper_is_one_of_its_sheet(string example)
    {
        foreach (var sheet in SheetSet.Of(PlanOf(example)))
        {
            var texts = Texts(sheet).ToArray();
            var left = Counted(texts);
            // Headings stand again where their part goes on, and the timeline has its hours above each day.
            var again = Counted([sheet.Job, .. sheet.Blocks.OfType<Heading>().Select(heading => heading.Text), .. sheet.Blocks.OfType<NewPage>().Select(page => page.Head)]);
            var hours = Enumerable.Range(0, 25).Select(PlanWords.Hour).ToHashSet();
            foreach (var page in SheetSamples.Pages(sheet, PaperSize.Letter))
            {
                foreach (var (number, count) in Counted([Printed(page)]))
                {
                    var isThere = again.ContainsKey(number) || (sheet.Name == "timeline" && hours.Contains(number));
                    (isThere || (left.TryGetValue(number, out var rest) && rest >= count)).ShouldBeTrue($"{number} on page {page.Number} of {sheet.Name}");
                    left[number] = left.GetValueOrDefault(number) - count;
                }
            }
        }
    }

    [Theory]
    [InlineData("Hands-on 4 min and 1 h 61 min.")]
    [InlineData("Finish Sun 16 May 15:58.")]
    [InlineData("Known prices add to 71.76 USD")]
    [InlineData("3 of 6 cans")]
    [InlineData("Room 3,961 ft³, mixing factor 6.")]
    [InlineData("stations 1 to 3")]
    public void A_number_of_its_own_would_be_found(string text) => new PlanPhrases(SheetSamples.Roadster()).Left(text).ShouldNotBeNull();

    private static Plan PlanOf(string example) => example switch
    {
        "roadster" => SheetSamples.Roadster(),
        "van" => SheetSamples.Van(),
        _ => SheetSamples.Class(),
    };

    private static List<string> Texts(Sheet sheet)
    {
        var texts = new List<string>();
        SheetTexts.Change(sheet, text =>
        {
            texts.Add(text);
            return text;
        });
        return texts;
    }

    private static Dictionary<string, int> Counted(IEnumerable<string> texts) =>
        texts.SelectMany(text => Regex.Matches(text, @"\d+").Select(match => match.Value)).GroupBy(number => number).ToDictionary(same => same.Key, same => same.Count());

    // In the order in which it was drawn, so that no two lines run together; the number of the page is the printer's own.
    private static string Printed(Page page)
    {
        var drawn = string.Join(' ', page.Letters.GroupBy(letter => letter.TextSequence).Select(run => string.Concat(run.Select(letter => letter.Value))));
        return Regex.Replace(drawn, @"page \d+ of \d+", "page");
    }
}
