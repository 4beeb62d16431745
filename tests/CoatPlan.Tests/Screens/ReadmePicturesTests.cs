using CoatPlan.App;
using CoatPlan.App.Desk;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

/// <summary>Keeps the two screens in the README as the program shows them with the weekend's job; set COATPLAN_PICTURES to write them anew.</summary>
public sealed class ReadmePicturesTests
{
    private const string Indent = "    ";

    private static readonly string Readme = Path.Combine(Repository.Root, "README.md");

    [Fact]
    public void The_screens_in_the_readme_are_those_of_the_weekend()
    {
        using var ui = new HeadlessUi(JobFile.Open(Path.Combine(AppContext.BaseDirectory, "presets", "jobs", "roadster-weekend.job.yaml")), JobSource.Workshop(Sources.Usual));
        Keep("[1 Surfaces]", ui.Picture);

        ui.Type("4");
        ui.Press([.. Enumerable.Repeat(Key.CursorRight, 5)]);

        Keep("[4 Timeline]", ui.Picture);
    }

    private static void Keep(string place, string picture)
    {
        var block = string.Concat(picture.TrimEnd().Split('\n').Select(line => line.Length == 0 ? "\n" : $"{Indent}{line}\n"));
        if (Environment.GetEnvironmentVariable("COATPLAN_PICTURES") is { Length: > 0 })
            File.WriteAllText(Readme, Replaced(File.ReadAllText(Readme), place, block));

        File.ReadAllText(Readme).ShouldContain(block, Case.Sensitive, $"{place} in the README is not what the program shows; COATPLAN_PICTURES=1 writes it anew");
    }

    // A picture goes on to the next line that is text again.
    private static string Replaced(string readme, string place, string block)
    {
        var lines = readme.Split('\n');
        var at = Array.FindIndex(lines, line => line.StartsWith(Indent, StringComparison.Ordinal) && line.Contains(place, StringComparison.Ordinal)) - 1;
        var end = Array.FindIndex(lines, at, line => line.Length > 0 && !line.StartsWith(Indent, StringComparison.Ordinal));
        return string.Concat(string.Join('\n', lines[..at]), "\n", block, "\n", string.Join('\n', lines[end..]));
    }
}
