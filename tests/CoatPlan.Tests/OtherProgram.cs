using System.Diagnostics;
using System.Text;

namespace CoatPlan.Tests;

/// <summary>Another program of this machine, run to its end.</summary>
internal static class OtherProgram
{
    /// <summary>What it wrote, line ends of LF; it must end well and say nothing on the error stream.</summary>
    public static string Run(string folder, string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        // Neither a repository above the folder nor the build that runs these tests has a say.
        start.Environment["GIT_CEILING_DIRECTORIES"] = Path.GetDirectoryName(folder);
        foreach (var name in start.Environment.Keys.Where(name => name == "GIT_DIR" || name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToList())
            start.Environment.Remove(name);

        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start");
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        errors.GetAwaiter().GetResult().ShouldBeEmpty();
        process.ExitCode.ShouldBe(0, output);
        return output.ReplaceLineEndings("\n");
    }

    /// <summary>Whether a program of this name is on the path.</summary>
    public static bool IsThere(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(path => File.Exists(Path.Combine(path, program)));
}
