namespace CoatPlan.Tests.Faults;

/// <summary>The real program, killed while it saves.</summary>
public sealed class SavesThatAreCutOff
{
    private const string ByHand = "COATPLAN_KILLS";

    [Fact]
    public void The_old_file_or_the_new_one_is_whole_wherever_the_program_is_killed()
    {
        if (OperatingSystem.IsWindows() || !OtherProgram.IsThere("bash") || !OtherProgram.IsThere("awk"))
            return;

        var times = Environment.GetEnvironmentVariable(ByHand) ?? "6";

        OtherProgram.Run(Path.GetTempPath(), Path.Combine(Repository.Root, "tests", "faults", "kill-saves"), Path.Combine(AppContext.BaseDirectory, "coatplan"), times)
            .ShouldContain("whole each time");
    }
}
