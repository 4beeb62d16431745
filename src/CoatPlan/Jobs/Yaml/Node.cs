using CoatPlan.Problems;

namespace CoatPlan.Jobs.Yaml;

/// <summary>A value in a YAML text, and where it stands: a text, a list or a map; there are no other kinds.</summary>
internal abstract class Node
{
    private protected Node()
    {
    }

    /// <summary>Line and column of its first character.</summary>
    public required Mark Mark { get; init; }

    /// <summary>Offset of its first character, of its anchor or tag if it has one.</summary>
    public required int Start { get; init; }

    /// <summary>Offset behind its last character; of a block list or map, of what follows it.</summary>
    public required int End { get; init; }

    /// <summary>Whether it carries an anchor or a tag.</summary>
    public bool IsMarked { get; init; }

    /// <summary>Values in it, itself included, aliases counted out.</summary>
    public required long Size { get; init; }

    /// <summary>Levels in it, itself included.</summary>
    public required int Height { get; init; }
}
