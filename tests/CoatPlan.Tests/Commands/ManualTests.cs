namespace CoatPlan.Tests.Commands;

/// <summary>The manual page is made from the commands, so it cannot say anything else than the help does.</summary>
public sealed class ManualTests
{
    private static readonly string Page = CommandRun.Of("manual").Output;

    [Fact]
    public void The_page_in_the_packages_is_the_newest()
    {
        var stored = Path.Combine(Repository.Root, "packaging", "coatplan.1");
        if (Environment.GetEnvironmentVariable("COATPLAN_PICTURES") is not null)
            File.WriteAllText(stored, Page);

        File.ReadAllText(stored).ReplaceLineEndings("\n").ShouldBe(Page, "renew it: COATPLAN_PICTURES=1 dotnet test --filter FullyQualifiedName~ManualTests");
    }

    [Fact]
    public void Every_command_and_option_of_the_help_is_on_the_page()
    {
        foreach (var command in CommandsOf(CommandRun.Of("--help").Output))
        {
            Page.ShouldContain($".SS \"{command}");
            var help = CommandRun.Of(command, "--help").Output;
            foreach (var option in help.Split('\n').Where(line => line.StartsWith("  --", StringComparison.Ordinal)).Select(line => line.Trim().Split(' ', ',')[0]))
                Page.ShouldContain(option.Replace("-", "\\-", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_formatter_finds_nothing_wrong_where_it_is_there()
    {
        Assert.SkipUnless(OtherProgram.IsThere("groff"), "groff is not here");
        using var folder = new TempFolder();
        folder.File("page", Page);

        var text = OtherProgram.Run(folder.Path, "groff", "-man", "-Tutf8", "-ww", "-P-cbou", "page");

        text.ShouldContain("EXIT STATUS");
        text.ShouldContain("--paper");
    }

    private static IEnumerable<string> CommandsOf(string help) =>
        help.Split('\n').SkipWhile(line => line != "Commands:").Skip(1).TakeWhile(line => line.Length > 0).Select(line => line.Trim().Split(' ')[0]);
}
