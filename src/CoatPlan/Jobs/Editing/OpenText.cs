using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Jobs.Editing;

/// <summary>A text that is being edited, and what stands where in it.</summary>
internal sealed class OpenText
{
    public OpenText(string text, Node root)
    {
        Text = text;
        Root = new(root, new(root.Start, root.End, IsAlias: false), null, 0);
        int line = text.IndexOf('\n', StringComparison.Ordinal);
        NewLine = line > 0 && text[line - 1] == '\r' ? "\r\n" : "\n";
        IsJson = root is MapNode { IsFlow: true } map && map.Entries.All(entry => text[entry.Key.Start] == '"');
    }

    public string Text { get; }

    public Found Root { get; }

    /// <summary>The line end of the text's first line.</summary>
    public string NewLine { get; }

    /// <summary>Whether the whole text is in braces with quoted keys.</summary>
    public bool IsJson { get; }

    /// <summary>Goes along a path as far as there is something.</summary>
    /// <returns>The last value that was found, and how many steps led to it.</returns>
    public (Found Found, int Steps) Walk(JobPath path)
    {
        var found = Root;
        for (int i = 0; i < path.Steps.Length; i++)
        {
            if (Step(found, path.Steps[i]) is not { } next) return (found, i);
            found = next;
        }

        return (found, path.Steps.Length);
    }

    private static Found? Step(Found from, PathStep step)
    {
        if (step.Key is { } key && from.Node is MapNode map)
        {
            int index = map.Entries.IndexOf(map.Find(key)!);
            return index < 0 ? null : new(map.Entries[index].Value, map.Entries[index].At, from, index);
        }

        if (step.Key is null && from.Node is ListNode list && step.Index < list.Items.Length)
        {
            return new(list.Items[step.Index], list.Places[step.Index], from, step.Index);
        }

        return null;
    }

    /// <summary>Behind the last character of a value, comments and line ends after it left out.</summary>
    public int ContentEnd(Node node, Stretch at)
    {
        if (at.IsAlias) return at.End;
        switch (node)
        {
            case MapNode { IsFlow: false, Entries.IsEmpty: false } map:
                var last = map.Entries[^1];
                return Math.Max(BehindColon(last), ContentEnd(last.Value, last.At));
            case ListNode { IsFlow: false, Items.IsEmpty: false } list:
                return ContentEnd(list.Items[^1], list.Places[^1]);
            case TextNode { IsBlock: true }:
                int end = at.End;
                while (end > at.Start && char.IsWhiteSpace(Text[end - 1])) end--;
                return end;
            default:
                return at.End;
        }
    }

    /// <summary>Behind the colon of an entry.</summary>
    public int BehindColon(MapEntry entry)
    {
        int colon = Text.IndexOf(':', entry.Key.End);
        return colon < 0 || (colon > entry.At.Start && entry.At.Start >= entry.Key.End) ? entry.Key.End : colon + 1;
    }

    /// <summary>Where the line of an offset begins.</summary>
    public int LineStart(int offset) => offset == 0 ? 0 : Text.LastIndexOf('\n', offset - 1) + 1;

    /// <summary>Where the line of an offset ends, before its line end.</summary>
    public int LineEnd(int offset)
    {
        int end = Text.IndexOf('\n', offset);
        if (end < 0) return Text.Length;
        return end > offset && Text[end - 1] == '\r' ? end - 1 : end;
    }

    /// <summary>Where the line after the one of an offset begins.</summary>
    public int NextLine(int offset)
    {
        int end = Text.IndexOf('\n', offset);
        return end < 0 ? Text.Length : end + 1;
    }

    /// <summary>Whether only blanks stand between two offsets.</summary>
    public bool IsBlank(int start, int end) => string.IsNullOrWhiteSpace(Text[start..end]);
}
