using CoatPlan.App;

namespace CoatPlan.Tests.Commands;

public sealed class UsageTests
{
    [Theory]
    [InlineData("plan")]
    [InlineData("plan", "a", "b")]
    [InlineData("plan", "--width", "two", "a")]
    [InlineData("plan", "--width", "39", "a")]
    [InlineData("plan", "--bogus", "a")]
    [InlineData("check")]
    [InlineData("sheets", "a")]
    [InlineData("sheets", "a", "--to", "b", "--paper", "napkin")]
    [InlineData("new")]
    [InlineData("a", "b")]
    public void Bad_usage_is_two_and_says_where_help_is(params string[] arguments)
    {
        var run = CommandRun.Of(arguments);

        run.ExitCode.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Errors.ShouldContain("--help");
    }

    [Fact]
    public void A_command_that_is_nearly_spelt_is_named()
    {
        CommandRun.Of("plann", "weekend.job.yaml").Errors.ShouldContain("no command is called `plann`; did you mean `plan`?");
        CommandRun.Of("weekend.job.yaml", "weekend.job.yaml").Errors.ShouldNotContain("did you mean");
        CommandRun.Of("plan", "a", "b").Errors.ShouldNotContain("did you mean");
    }

    [Theory]
    [InlineData("plan", "--json")]
    [InlineData("sheets", "--to")]
    [InlineData("check", "coatplan check")]
    [InlineData("new", "coatplan new")]
    [InlineData("presets", "coatplan presets")]
    [InlineData("open", "coatplan roadster.job.yaml")]
    public void Help_has_an_example(string command, string inIt)
    {
        var run = CommandRun.Of(command, "--help");

        run.ExitCode.ShouldBe(0);
        run.Output.ShouldContain("Example:");
        run.Output.ShouldContain(inIt);
        run.Output.ShouldContain("Exit codes");
    }

    [Fact]
    public void Help_of_the_program_lists_the_commands()
    {
        var run = CommandRun.Of("--help");

        run.ExitCode.ShouldBe(0);
        foreach (var command in new[] { "open", "plan", "check", "sheets", "new", "presets", "schema", "completion", "manual" })
            run.Output.ShouldContain($"\n  {command} ");
    }

    [Fact]
    public void The_version_is_alone_on_its_line()
    {
        CommandRun.Of("--version").Output.Trim().ShouldMatch(@"^\d+\.\d+\.\d+(-dev\.\d+)?$");
    }

    [Theory]
    [InlineData]
    [InlineData("some.job.yaml")]
    [InlineData("open")]
    public void Without_a_terminal_the_terminal_UI_says_so_and_ends(params string[] arguments)
    {
        var run = CommandRun.Of(arguments);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("needs a terminal");
    }

    [Fact]
    public void An_unforeseen_error_is_one_line_and_a_stack_trace_only_when_asked_for()
    {
        var broken = new Surroundings
        {
            Out = new StringWriter(),
            Error = new StringWriter { NewLine = "\n" },
            OpenInput = () => throw new InvalidOperationException("the wire\nis cut"),
            InputIsTerminal = false,
            OutputIsTerminal = false,
        };

        Edge.Run(["check", "-"], broken).ShouldBe(1);
        broken.Error.ToString()!.Split('\n', StringSplitOptions.RemoveEmptyEntries).ShouldHaveSingleItem().ShouldContain("the wire is cut");

        Edge.Run(["check", "-", "--trace"], broken).ShouldBe(1);
        broken.Error.ToString()!.ShouldContain("   at ");
    }

    [Fact]
    public void A_reader_that_has_had_enough_is_no_error()
    {
        using var output = new BrokenPipe();
        var errors = new StringWriter();

        var result = Edge.Run(["presets"], new Surroundings
        {
            Out = output,
            Error = errors,
            OpenInput = () => Stream.Null,
            InputIsTerminal = false,
            OutputIsTerminal = false,
        });

        result.ShouldBe(0);
        errors.ToString().ShouldBeEmpty();
    }

    private sealed class BrokenPipe : StringWriter
    {
        private const int UnixBrokenPipe = 32;

        public override void WriteLine(string? value) => throw new IOException("Broken pipe", UnixBrokenPipe);
    }
}
