using System.Text.RegularExpressions;
using CoatPlan.Tests.Commands;

namespace CoatPlan.Tests.Docs;

/// <summary>Every command on a page is run, in the order of the page, in a folder with the example jobs and the files that the page shows; it prints what the page says.</summary>
public sealed class CommandsOnPages
{
    private const string Left = "...";

    public static TheoryData<string> Pages => DocsPage.Where(page => page.Blocks.Any(block => block.Language == "console"));

    [Theory]
    [MemberData(nameof(Pages))]
    public void What_a_page_says_the_program_does(string name)
    {
        using var folder = new TempFolder();
        foreach (var job in Directory.GetFiles(Path.Combine(Repository.Root, "presets", "jobs")))
            File.Copy(job, folder.File(Path.GetFileName(job)));

        foreach (var block in DocsPage.Of(name).Blocks)
        {
            if (block.File is { } file)
                Write(folder, file, block.Text);
            else if (block.Language == "console")
                RunAll(folder, block, name);
        }
    }

    [Fact]
    public void No_command_hides_in_a_block_that_is_not_run() => DocsPage.All
        .SelectMany(page => page.Blocks.Where(block => block.Language is not ("console" or "yaml") && Regex.IsMatch(block.Text, @"^\$? *coatplan ", RegexOptions.Multiline)).Select(block => $"{page.Name}:{block.EndsAt}"))
        .ShouldBeEmpty();

    private static void Write(TempFolder folder, string file, string text)
    {
        var path = folder.File(file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private static void RunAll(TempFolder folder, DocsBlock block, string page)
    {
        var lines = block.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        for (var at = 0; at < lines.Length;)
        {
            lines[at].ShouldStartWith("$ ");
            var command = lines[at][2..];
            var said = lines.Skip(at + 1).TakeWhile(line => !line.StartsWith("$ ", StringComparison.Ordinal)).ToArray();
            RunOne(folder, command, said, $"{page}, above line {block.EndsAt}: {command}");
            at += 1 + said.Length;
        }
    }

    private static void RunOne(TempFolder folder, string command, string[] said, string where)
    {
        var words = Regex.Matches(command, "\"([^\"]*)\"|(\\S+)").Select(match => match.Groups[1].Success ? match.Groups[1].Value : match.Groups[2].Value).ToList();
        var to = words.IndexOf(">");
        var into = to < 0 ? null : folder.File(words[to + 1]);
        if (to >= 0)
            words.RemoveRange(to, 2);
        words[0].ShouldBe("coatplan", where);

        var run = CommandRun.Of([.. words.Skip(1).Select((word, at) => IsPath(folder, word, at == 0 ? "" : words[at]) ? folder.File(word) : word)]);

        var output = Plain(folder, run.Output);
        if (into is not null)
            File.WriteAllText(into, run.Output);
        var expected = said.LastOrDefault() is { } last && Regex.Match(last, @"^\(exit code (\d)\)$") is { Success: true } code ? (Exit: int.Parse(code.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), Lines: said[..^1]) : (Exit: 0, Lines: said);
        run.ExitCode.ShouldBe(expected.Exit, $"{where}\n{run.Errors}");
        Follows(into is null ? output + Plain(folder, run.Errors) : Plain(folder, run.Errors), expected.Lines, where);
    }

    private static bool IsPath(TempFolder folder, string word, string before) =>
        before is "--to" or "--presets" || word.EndsWith(".yaml", StringComparison.Ordinal) || (word.Length > 1 && File.Exists(folder.File(word)));

    private static string Plain(TempFolder folder, string text) =>
        text.Replace(folder.Path + Path.DirectorySeparatorChar, "", StringComparison.Ordinal).Replace(folder.Path, ".", StringComparison.Ordinal);

    // Each line of the page comes in the output, in order; between two that stand together there is nothing else but empty lines.
    private static void Follows(string output, string[] said, string where)
    {
        var lines = output.Split('\n').Select(line => line.TrimEnd()).Where(line => line.Length > 0).ToList();
        var at = 0;
        var mayLeave = true;
        foreach (var line in said.Select(line => line.TrimEnd()))
        {
            if (line.Trim() == Left)
            {
                mayLeave = true;
                continue;
            }

            var found = mayLeave ? lines.FindIndex(at, candidate => candidate == line) : at < lines.Count && lines[at] == line ? at : -1;
            found.ShouldBeGreaterThanOrEqualTo(0, $"{where}\nis not there: {line}\nin:\n{string.Join('\n', lines.Skip(at).Take(200))}");
            at = found + 1;
            mayLeave = false;
        }
    }
}
