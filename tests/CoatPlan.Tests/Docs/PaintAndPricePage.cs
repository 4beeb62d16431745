using CoatPlan.Explanations;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Docs;

/// <summary>The worked example of the page on paint and price is computed from the page itself: its job, and each answer in its table.</summary>
public sealed class PaintAndPricePage
{
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(Root(), "docs", "explanation", "paint-and-price.md"));

    private static readonly Workings Example = Planner.Work(
        JobIntake.Read(string.Join('\n', Lines.SkipWhile(line => line != "```yaml").Skip(1).TakeWhile(line => line != "```")), "page", Trade.Standard, _ => FileText.Unreadable("none")).Ready!,
        SearchDepth.Quick).Workings;

    public static TheoryData<string, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (var cells in Lines.SkipWhile(line => !line.StartsWith("| asked", StringComparison.Ordinal)).Skip(2).Select(line => line.Split('|', StringSplitOptions.TrimEntries)))
                rows.Add(cells[1].Trim('`'), cells[2]);
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_page_answers_as_the_program_does(string asked, string answer)
    {
        var explanation = Explaining.Of(Example, asked).Explanation.ShouldNotBeNull(asked);

        explanation.Value.Replace(" of a package", "", StringComparison.Ordinal).ShouldBe(answer);
    }

    [Fact]
    public void The_page_has_a_worked_example() => Rows.Count.ShouldBeGreaterThan(10);

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "CoatPlan.sln")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("no solution above the tests");
        return folder;
    }
}
