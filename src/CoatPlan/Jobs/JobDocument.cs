using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>The text of a job file with what stands in it as YAML, which is parsed once however often the job is read, edited and outlined.</summary>
public sealed class JobDocument
{
    private readonly Lazy<(Node? Root, ImmutableArray<Problem> Problems)> parsed;

    private JobDocument(string text)
    {
        Text = text;
        Plain = text.StartsWith('\uFEFF') ? text[1..] : text;
        parsed = new(() => Parse(Plain));
    }

    /// <summary>The text, with its byte order mark where it has one.</summary>
    public string Text { get; }

    /// <summary>The text without a byte order mark.</summary>
    internal string Plain { get; }

    /// <summary>What stands in it; null: nothing, or it is no YAML, which is among the problems.</summary>
    internal Node? Root => parsed.Value.Root;

    /// <summary>What is wrong with it as YAML, of no named file.</summary>
    internal ImmutableArray<Problem> Problems => parsed.Value.Problems;

    /// <summary>The document of a text, which is parsed when that is first asked for.</summary>
    /// <param name="text">The text, YAML 1.2 or JSON.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static JobDocument FromString(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new(text);
    }

    /// <summary>The document of a text.</summary>
    /// <param name="text">The text, YAML 1.2 or JSON.</param>
    public static implicit operator JobDocument(string text) => FromString(text);

    private static (Node? Root, ImmutableArray<Problem> Problems) Parse(string text)
    {
        var problems = new ProblemList(file: null);
        var root = YamlText.Read(text, problems);
        return (root, problems.InOrder());
    }
}
