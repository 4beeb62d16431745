using CoatPlan.App.Commands;

namespace CoatPlan.Tests.Commands;

public sealed class CompletionTests
{
    [Theory]
    [InlineData("pl", "plan")]
    [InlineData("ch", "chance,check")]
    [InlineData("su", "")]
    [InlineData("--v", "--version")]
    [InlineData("plan --j", "--json")]
    [InlineData("plan --v", "")]
    [InlineData("sheets a.job.yaml --paper ", "a4,letter")]
    [InlineData("sheets a.job.yaml --paper a", "a4")]
    [InlineData("completion ", "bash,fish,pwsh,zsh")]
    [InlineData("schema p", "plan")]
    [InlineData("nonsense -", "--help,--hours-from,--presets,--trace")]
    [InlineData("plan a.job.yaml b", "")]
    public void What_may_stand_there_is_suggested(string typed, string suggested)
    {
        var run = CommandRun.Of(["suggest", "--", .. typed.Split(' ')]);

        run.ExitCode.ShouldBe(0);
        run.Errors.ShouldBeEmpty();
        run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Except(["--help", "--presets", "--trace"]).ShouldBe(suggested.Split(',', StringSplitOptions.RemoveEmptyEntries).Except(["--help", "--presets", "--trace"]));
    }

    [Fact]
    public void Job_files_and_folders_are_suggested_where_a_job_is_due_and_folders_where_a_folder_is()
    {
        using var folder = new TempFolder();
        folder.File("van.job.yaml", "");
        folder.File("vacation.jpg", "");
        Directory.CreateDirectory(folder.File("vault"));
        var begun = folder.File("va").Replace('\\', '/');
        var there = begun[..^2];

        Said("plan", begun).ShouldBe([$"{there}van.job.yaml", $"{there}vault/"]);
        Said(begun).ShouldBe([$"{there}van.job.yaml", $"{there}vault/"]);
        Said("compare", "a.job.yaml", begun).ShouldBe([$"{there}van.job.yaml", $"{there}vault/"]);
        Said("sheets", "a.job.yaml", "--to", begun).ShouldBe([$"{there}vault/"]);
        Said("plan", $"{there}no-such-folder/").ShouldBeEmpty();
    }

    [Fact]
    public void Every_shell_has_a_script_that_asks_the_program()
    {
        CompletionCommand.Shells.ShouldBe(["bash", "fish", "pwsh", "zsh"]);
        foreach (var shell in CompletionCommand.Shells)
        {
            var run = CommandRun.Of("completion", shell);

            run.ExitCode.ShouldBe(0);
            run.Output.ShouldContain("coatplan suggest -- ");
        }
    }

    [Theory]
    [InlineData("coatplan|ch", "chance check")]
    [InlineData("coatplan|plan|--", "--help --hours-from --json --presets --trace --width")]
    [InlineData("coatplan|plan|my ga", "my garage.job.yaml")]
    public void Bash_completes_by_the_script(string typed, string completed)
    {
        Assert.SkipUnless(OtherProgram.IsThere("bash"), "bash is not here");
        using var folder = new TempFolder();
        folder.File("my garage.job.yaml", "");
        folder.File("bash-script", CommandRun.Of("completion", "bash").Output);
        var program = Path.Combine(AppContext.BaseDirectory, "coatplan.dll");
        var words = typed.Split('|');

        // The shell's own variables for a completion, then what it would offer.
        folder.File("try", $$"""
            coatplan() { dotnet '{{program}}' "$@"; }
            . ./bash-script
            COMP_WORDS=({{string.Join(' ', words.Select(word => $"'{word}'"))}})
            COMP_CWORD={{words.Length - 1}}
            $(complete -p coatplan | sed 's/.* -F \([^ ]*\) .*/\1/')
            echo "${COMPREPLY[*]}"
            """);

        OtherProgram.Run(folder.Path, "bash", "try").Trim().ShouldBe(completed);
    }

    [Theory]
    [InlineData("coatplan pl", "plan")]
    [InlineData("coatplan sheets my.job.yaml --paper ", "a4 letter")]
    [InlineData("coatplan plan v", "van.job.yaml")]
    public void Fish_completes_by_the_script_where_it_is_there(string typed, string completed)
    {
        Assert.SkipUnless(OtherProgram.IsThere("fish"), "fish is not here");
        using var folder = new TempFolder();
        folder.File("van.job.yaml", "");
        folder.File("fish-script", CommandRun.Of("completion", "fish").Output);
        folder.File("try", $"""
            function coatplan; dotnet '{Path.Combine(AppContext.BaseDirectory, "coatplan.dll")}' $argv; end
            source fish-script
            complete -C "{typed}"
            """);

        OtherProgram.Run(folder.Path, "fish", "--no-config", "try").Trim().Replace('\n', ' ').ShouldBe(completed);
    }

    [Theory]
    [InlineData("zsh", "-n")]
    [InlineData("fish", "--no-execute")]
    public void The_other_shells_read_their_scripts_where_they_are_there(string shell, string readOnly)
    {
        Assert.SkipUnless(OtherProgram.IsThere(shell), $"{shell} is not here");
        using var folder = new TempFolder();
        folder.File("script", CommandRun.Of("completion", shell).Output);

        OtherProgram.Run(folder.Path, shell, readOnly, "script").ShouldBeEmpty();
    }

    private static string[] Said(params string[] words) =>
        CommandRun.Of(["suggest", "--", .. words]).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

}
