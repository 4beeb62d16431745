using System.Text;

namespace CoatPlan.Tests.Docs;

/// <summary>A page of docs/ as its tests read it: fenced blocks and tables, in order.</summary>
internal sealed record DocsPage(string Name, ImmutableArray<DocsBlock> Blocks, ImmutableArray<DocsTable> Tables, ImmutableArray<string> Prose)
{
    public static string Folder { get; } = Path.Combine(Repository.Root, "docs");

    public static ImmutableArray<DocsPage> All { get; } =
        [.. Directory.GetFiles(Folder, "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(Read)];

    public static DocsPage Of(string name) => All.Single(page => page.Name == name);

    /// <summary>The names of the pages with something on them.</summary>
    public static TheoryData<string> Where(Func<DocsPage, bool> has) => [.. All.Where(has).Select(page => page.Name)];

    private static DocsPage Read(string path)
    {
        var blocks = ImmutableArray.CreateBuilder<DocsBlock>();
        var tables = ImmutableArray.CreateBuilder<DocsTable>();
        var prose = ImmutableArray.CreateBuilder<string>();
        var rows = new List<ImmutableArray<string>>();
        StringBuilder? block = null;
        var (language, before) = ("", "");
        foreach (var (line, at) in File.ReadAllLines(path).Select((line, at) => (line, at + 1)))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                if (block is null)
                    (block, language) = (new StringBuilder(), line[3..].Trim());
                else
                {
                    blocks.Add(new(language, block.ToString(), before, at));
                    (block, before) = (null, "");
                }
            }
            else if (block is not null)
            {
                block.Append(line).Append('\n');
            }
            else if (line.StartsWith('|'))
            {
                rows.Add([.. line.Trim().Trim('|').Replace("\\|", "¦", StringComparison.Ordinal).Split('|', StringSplitOptions.TrimEntries).Select(cell => cell.Replace('¦', '|'))]);
                prose.Add(line);
            }
            else
            {
                if (rows.Count > 2)
                    tables.Add(new(rows[0], [.. rows.Skip(2)], blocks.Count));
                rows.Clear();
                if (line.Length > 0)
                    before = line;
                prose.Add(line);
            }
        }

        if (rows.Count > 2)
            tables.Add(new(rows[0], [.. rows.Skip(2)], blocks.Count));
        return new(Path.GetRelativePath(Folder, path).Replace('\\', '/'), blocks.ToImmutable(), tables.ToImmutable(), prose.ToImmutable());
    }
}
