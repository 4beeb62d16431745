using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Commands;

public sealed class CheckCommandTests
{
    [Fact]
    public void What_counts_for_nothing_is_told_as_the_plan_warns_of_it()
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob.TrimEnd('\n') + """

            have: {blackk: 2, black: 3 ft, tack cloth: 5}
            prices: {labour: 5 /h, consumables: {tak cloth: {price: 1}}}

            """);

        var run = CommandRun.Of("check", job);

        run.ExitCode.ShouldBe(0);
        run.Errors.ShouldBeEmpty();
        var said = string.Join(' ', run.Output.Split('\n').Select(line => line.Trim()));
        said.ShouldContain("no mistake, but 3 warnings");
        said.ShouldNotContain("nothing wrong");
        said.ShouldContain("`have` names blackk");
        said.ShouldContain("Did you mean black?");
        said.ShouldContain("in a unit that its label does not allow");
        said.ShouldContain("`prices` names tak cloth");
        said.ShouldContain("Did you mean tack-cloth?");
    }
}
