using System.Collections.Concurrent;
using CoatPlan.App;
using CoatPlan.Tests.Commands;

namespace CoatPlan.Tests.Faults;

/// <summary>The real program on a disk that fails call by call, on a slow one, and beside another that makes the same file.</summary>
public sealed class SavesUnderStrain : IDisposable
{
    private readonly TempFolder folder = new();

    [Theory]
    [InlineData("fail-saves", "whole each time", "EIO")]
    [InlineData("slow-saves", "whole each time")]
    [InlineData("race-saves", "one made it, the other was told")]
    public void Nothing_is_lost(string script, string said, params string[] more)
    {
        if (OperatingSystem.IsWindows() || !OtherProgram.IsThere("bash") || !OtherProgram.IsThere("awk"))
            return;

        var every = Environment.GetEnvironmentVariable("COATPLAN_KILLS") is null ? 3 : 1;

        var output = OtherProgram.Run(Path.GetTempPath(), "env",
            [$"FAIL_EVERY={every}", Path.Combine(Repository.Root, "tests", "faults", script), Path.Combine(AppContext.BaseDirectory, "coatplan"), .. more]);

        (output.Contains(said, StringComparison.Ordinal) || output.Contains("without strace", StringComparison.Ordinal)).ShouldBeTrue(output);
    }

    [Fact]
    public void A_name_can_be_given_once()
    {
        if (OperatingSystem.IsWindows())
            return;

        for (var round = 0; round < 50; round++)
        {
            var name = folder.File($"{round}.job.yaml");
            var made = new ConcurrentBag<int>();
            var told = new ConcurrentBag<string>();
            Parallel.For(0, 4, new ParallelOptions { MaxDegreeOfParallelism = 4 }, i =>
            {
                var own = folder.File($"{round}.{i}.own", $"of {i}");
                try
                {
                    UnixFiles.TryGive(own, name).ShouldBeTrue();
                    made.Add(i);
                }
                catch (IOException exception)
                {
                    told.Add(exception.Message);
                }
            });

            File.ReadAllText(name).ShouldBe($"of {made.ShouldHaveSingleItem()}");
            told.Count.ShouldBe(3);
            told.ShouldAllBe(message => message.Contains("already exists"));
        }
    }

    [Fact]
    public void A_file_without_a_name_to_give_is_an_answer_and_no_error()
    {
        if (OperatingSystem.IsWindows())
            return;

        UnixFiles.TryGive(folder.File("missing"), folder.File("a")).ShouldBeFalse();
        File.Exists(folder.File("a")).ShouldBeFalse();
        Should.NotThrow(() => UnixFiles.Flush(folder.File("missing")));
        Should.NotThrow(() => UnixFiles.Flush(folder.Path));
    }

    public void Dispose() => folder.Dispose();
}
