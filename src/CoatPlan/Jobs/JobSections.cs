using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>What stands under each key of a job file, and where: what stands there as it did before was read as it was before.</summary>
internal sealed class JobSections
{
    private readonly string text;
    private readonly Dictionary<string, (Mark Mark, int Start, int End)> sections = new(StringComparer.Ordinal);
    private readonly bool mayRepeat;

    private JobSections(string text)
    {
        this.text = text;
        // What an alias repeats stands elsewhere, and may change there.
        mayRepeat = text.Contains('&', StringComparison.Ordinal);
    }

    /// <summary>The sections of a job file.</summary>
    /// <param name="document">The file.</param>
    public static JobSections Of(JobDocument document)
    {
        var known = new JobSections(document.Plain);
        foreach (var entry in document.Root is MapNode map ? map.Entries : [])
            known.sections[entry.Key.Text] = (entry.Key.Mark, entry.Key.Start, entry.At.End);
        return known;
    }

    /// <summary>Whether a section is, letter by letter and in its place, as it was; also one that is in neither file.</summary>
    /// <param name="before">The file before a change.</param>
    /// <param name="key">The key of the section.</param>
    public bool IsAsIn(JobSections before, string key)
    {
        if (mayRepeat || before.mayRepeat)
            return false;

        var (isHere, wasThere) = (sections.TryGetValue(key, out var now), before.sections.TryGetValue(key, out var then));
        return isHere == wasThere && now.Mark == then.Mark && Span(now).SequenceEqual(before.Span(then));
    }

    private ReadOnlySpan<char> Span((Mark Mark, int Start, int End) section) => text.AsSpan(section.Start..section.End);
}
