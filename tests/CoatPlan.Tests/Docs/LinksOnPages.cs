using System.Text.RegularExpressions;

namespace CoatPlan.Tests.Docs;

public sealed class LinksOnPages
{
    private static readonly Regex Link = new(@"\]\(([^)#\s]+)(#[^)\s]*)?\)");

    [Fact]
    public void Every_link_leads_to_a_file()
    {
        var pages = DocsPage.All.Select(page => page.Name).Select(name => Path.Combine(DocsPage.Folder, name))
            .Concat(["README.md", "DEVELOPERS.md"]).Select(path => Path.Combine(Repository.Root, path));
        foreach (var page in pages)
        {
            foreach (var target in TargetsOf(page))
                (File.Exists(target) || Directory.Exists(target)).ShouldBeTrue($"{page}: {target}");
        }
    }

    [Fact]
    public void Every_page_is_found_from_the_index()
    {
        var found = TargetsOf(Path.Combine(DocsPage.Folder, "README.md")).Select(Path.GetFullPath).ToHashSet();

        DocsPage.All.Select(page => Path.GetFullPath(Path.Combine(DocsPage.Folder, page.Name))).Where(path => !found.Contains(path) && Path.GetFileName(path) != "README.md").ShouldBeEmpty();
    }

    [Fact]
    public void Every_job_on_a_page_reads_but_the_broken_ones()
    {
        foreach (var (page, job) in DocsPage.All.SelectMany(page => page.Blocks.Where(block => block.IsJob && block.File?.StartsWith("broken", StringComparison.Ordinal) != true).Select(block => (page, block))))
        {
            var intake = JobIntake.Read(job.Text, page.Name, Trade.Standard, file => FileOf(page, file));
            intake.Problems.ShouldBeEmpty(page.Name);
        }
    }

    private static FileText FileOf(DocsPage page, string file) =>
        page.Blocks.FirstOrDefault(block => block.File == file) is { } block ? FileText.Of(block.Text) : FileText.Unreadable($"the page shows no {file}");

    private static IEnumerable<string> TargetsOf(string page) => Link.Matches(File.ReadAllText(page))
        .Select(match => match.Groups[1].Value).Where(target => !target.Contains("://", StringComparison.Ordinal))
        .Select(target => Path.Combine(Path.GetDirectoryName(page)!, target));
}
