using CoatPlan.Explanations;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Docs;

/// <summary>The worked examples: a job on the page, and a table of what is asked of it; the test reads both from the page and computes the answers anew.</summary>
public sealed class WorkedExamples
{
    private static readonly Dictionary<string, Workings> Worked = [];

    public static TheoryData<string, string, string, int> Rows
    {
        get
        {
            var rows = new TheoryData<string, string, string, int>();
            foreach (var page in DocsPage.All)
            {
                foreach (var table in page.Tables.Where(table => table.Head[0] == "asked"))
                {
                    foreach (var row in table.Rows)
                        rows.Add(page.Name, row[0].Trim('`'), row[1], table.BlocksBefore);
                }
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_page_answers_as_the_program_does(string page, string asked, string answer, int blocks)
    {
        var explanation = Explaining.Of(ExampleOf(page, blocks), asked).Explanation.ShouldNotBeNull(asked);

        explanation.Value.Replace(" of a package", "", StringComparison.Ordinal).TrimEnd('s').ShouldBe(answer.TrimEnd('s'), $"{page}: {asked}");
    }

    [Theory]
    [InlineData("explanation/paint-and-price.md", 11)]
    [InlineData("explanation/areas.md", 8)]
    [InlineData("explanation/air.md", 4)]
    [InlineData("explanation/supplies.md", 5)]
    [InlineData("explanation/prep.md", 4)]
    public void The_page_has_a_worked_example(string page, int rows) =>
        DocsPage.Of(page).Tables.Where(table => table.Head[0] == "asked").Sum(table => table.Rows.Length).ShouldBeGreaterThanOrEqualTo(rows);

    private static Workings ExampleOf(string page, int blocks)
    {
        var text = DocsPage.Of(page).Blocks.Take(blocks).Last(block => block.IsJob).Text;
        lock (Worked)
        {
            if (!Worked.TryGetValue(text, out var workings))
            {
                var intake = JobIntake.Read(text, page, Trade.Standard, _ => FileText.Unreadable("none"));
                workings = Planner.Work(intake.Ready.ShouldNotBeNull(string.Join('\n', intake.Problems)), SearchDepth.Quick).Workings;
                Worked.Add(text, workings);
            }

            return workings;
        }
    }
}
