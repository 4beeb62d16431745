using CoatPlan.Problems;
using CsCheck;

namespace CoatPlan.Tests.Problems;

public sealed class ProblemTests
{
    [Fact]
    public void A_problem_is_one_line()
    {
        var problem = new Problem
        {
            Code = "unknown-key", File = "weekend.job.yaml", Line = 3, Column = 7, Message = "unknown key `fnish-by`",
            Expected = "a key of the job", Mend = "`finish-by`",
        };

        problem.ToString().ShouldBe("weekend.job.yaml:3:7: unknown key `fnish-by`, expected a key of the job; did you mean `finish-by`?");
    }

    [Fact]
    public void Whatever_was_tried_it_stays_one_line() =>
        Gen.String.Sample(text =>
        {
            string line = new Problem { Code = "x", File = text, Message = text, Expected = text, Mend = text }.ToString();
            line.ShouldNotContain('\n');
            line.ShouldNotContain('\r');
            line.ShouldNotContain('\u001b');
            line.Length.ShouldBeLessThan(1400);
        });

    [Theory]
    [InlineData("stele", "steel")]
    [InlineData("aluminum", "aluminium")]
    [InlineData("STEEL", "steel")]
    [InlineData("rubbr", "rubber")]
    [InlineData("alu", "aluminium")]
    [InlineData("chocolate", null)]
    [InlineData("", null)]
    public void The_nearest_word_is_guessed(string word, string? meant) =>
        Nearest.To(word, ["steel", "aluminium", "rubber", "ABS"]).ShouldBe(meant);

    [Fact]
    public void Distance_is_the_same_both_ways_and_zero_to_itself() =>
        Gen.Select(Gen.String[Gen.Char['a', 'd'], 0, 8], Gen.String[Gen.Char['a', 'd'], 0, 8]).Sample((a, b) =>
        {
            Nearest.Distance(a, b).ShouldBe(Nearest.Distance(b, a));
            Nearest.Distance(a, a).ShouldBe(0);
        });
}
