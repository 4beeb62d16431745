using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Jobs.Editing;

/// <summary>Puts items into lists, takes them out, copies and moves them.</summary>
internal static class ListEdit
{
    /// <summary>Puts an item into a list.</summary>
    /// <returns>Null: the list is written in a way that is not edited.</returns>
    public static TextChange? Insert(OpenText open, Found found, int index, JobValue item)
    {
        var list = (ListNode)found.Node;
        var writer = new ValueWriter(open.IsJson);
        if (list.IsFlow || list.Items.IsEmpty) return InsertFlow(open, found, index, writer.InLine(item, isInFlow: true));
        if (Chunks(open, list) is not { } chunks) return null;
        string indent = open.Text[open.LineStart(Dash(open, list, 0))..Dash(open, list, 0)];
        return InsertLines(open, chunks, index, writer.BlockItem(item, indent, open.NewLine));
    }

    /// <summary>Puts a copy of an item behind it, word for word.</summary>
    /// <returns>Null: the list is written in a way that is not edited.</returns>
    public static TextChange? Copy(OpenText open, Found found, int index)
    {
        var list = (ListNode)found.Node;
        int end = open.ContentEnd(list.Items[index], list.Places[index]);
        if (list.IsFlow) return InsertFlow(open, found, index + 1, open.Text[list.Places[index].Start..end]);
        if (Chunks(open, list) is not { } chunks) return null;
        int start = open.LineStart(Dash(open, list, index));
        return InsertLines(open, chunks, index + 1, open.Text[start..open.LineEnd(end)]);
    }

    /// <summary>Takes an item out of a list; of the last one, an empty list stays.</summary>
    /// <returns>Null: the list is written in a way that is not edited.</returns>
    public static TextChange? Remove(OpenText open, Found found, int index)
    {
        var list = (ListNode)found.Node;
        var at = list.Places[index];
        int end = open.ContentEnd(list.Items[index], at);
        if (list.IsFlow)
        {
            if (index < list.Items.Length - 1) return new(at.Start, list.Places[index + 1].Start, "");
            return index == 0 ? new(at.Start, end, "") : new(open.ContentEnd(list.Items[index - 1], list.Places[index - 1]), end, "");
        }

        if (Chunks(open, list) is null) return null;
        if (list.Items.Length > 1) return new(open.LineStart(Dash(open, list, index)), open.NextLine(end), "");
        int colon = found.Entry is { } entry ? open.BehindColon(entry) : -1;
        if (colon < 0) return null;
        string comment = open.Text[colon..open.LineEnd(colon)].TrimEnd();
        return new(colon, end, " []" + comment);
    }

    /// <summary>Moves an item; comments above it go with it, blank lines stay.</summary>
    /// <returns>Null: the list is written in a way that is not edited.</returns>
    public static TextChange? Move(OpenText open, Found found, int from, int to)
    {
        var list = (ListNode)found.Node;
        var order = Enumerable.Range(0, list.Items.Length).ToList();
        order.RemoveAt(from);
        order.Insert(to, from);
        if (list.IsFlow) return MoveFlow(open, list, order);
        if (Chunks(open, list) is not { } chunks) return null;
        var text = new System.Text.StringBuilder();
        for (int i = 0; i < chunks.Length; i++)
        {
            var moved = chunks[order[i]];
            text.Append(open.Text, chunks[i].Start, BehindBlankLines(open, chunks[i]) - chunks[i].Start);
            text.Append(open.Text[BehindBlankLines(open, moved)..moved.End].TrimEnd('\r', '\n'));
            if (i < chunks.Length - 1) text.Append(open.NewLine);
        }

        int end = chunks[^1].End;
        if (open.Text[end - 1] == '\n') text.Append(open.NewLine);
        return new(chunks[0].Start, end, text.ToString());
    }

    // Blank lines part the items wherever these go.
    private static int BehindBlankLines(OpenText open, (int Start, int End) chunk)
    {
        int at = chunk.Start;
        while (at < chunk.End && open.IsBlank(at, open.LineEnd(at))) at = open.NextLine(at);
        return at;
    }

    // Whole lines: from behind the item before to the end of the item's last line. Null: an item does not begin a line.
    private static (int Start, int End)[]? Chunks(OpenText open, ListNode list)
    {
        var chunks = new (int Start, int End)[list.Items.Length];
        int start = -1;
        for (int i = 0; i < chunks.Length; i++)
        {
            int dash = Dash(open, list, i);
            if (dash < 0 || !open.IsBlank(open.LineStart(dash), dash)) return null;
            int end = open.NextLine(Math.Max(dash, open.ContentEnd(list.Items[i], list.Places[i])));
            bool isBlockText = list.Items[i] is TextNode { IsBlock: true };
            if (isBlockText) return null;
            chunks[i] = (start < 0 ? WithCommentsAbove(open, open.LineStart(dash), dash) : start, end);
            start = end;
        }

        return chunks;
    }

    // Comments directly above the first item, indented as it is, are its own.
    private static int WithCommentsAbove(OpenText open, int lineStart, int dash)
    {
        int start = lineStart;
        while (start > 0)
        {
            int above = open.LineStart(start - 1);
            string line = open.Text[above..open.LineEnd(above)];
            bool isOwnComment = line.Length > dash - lineStart && line[dash - lineStart] == '#' && open.IsBlank(above, above + dash - lineStart);
            if (!isOwnComment) break;
            start = above;
        }

        return start;
    }

    private static TextChange InsertLines(OpenText open, (int Start, int End)[] chunks, int index, string lines)
    {
        if (index == 0) return new(chunks[0].Start, chunks[0].Start, lines + open.NewLine);
        int at = chunks[index - 1].End;
        bool endsLine = at > 0 && open.Text[at - 1] == '\n';
        return endsLine ? new(at, at, lines + open.NewLine) : new(at, at, open.NewLine + lines);
    }

    private static TextChange InsertFlow(OpenText open, Found found, int index, string item)
    {
        var list = (ListNode)found.Node;
        if (list.Items.IsEmpty)
        {
            int bracket = open.Text.IndexOf('[', found.At.Start);
            return new(bracket + 1, bracket + 1, item);
        }

        int first = list.Places[Math.Min(index, list.Items.Length - 1)].Start;
        int lineStart = open.LineStart(first);
        bool isOwnLine = open.IsBlank(lineStart, first) && lineStart > found.At.Start;
        string gap = isOwnLine ? open.NewLine + open.Text[lineStart..first] : " ";
        if (index < list.Items.Length) return new(first, first, item + "," + gap);
        int end = open.ContentEnd(list.Items[^1], list.Places[^1]);
        return new(end, end, "," + gap + item);
    }

    private static TextChange MoveFlow(OpenText open, ListNode list, List<int> order)
    {
        var text = new System.Text.StringBuilder();
        for (int i = 0; i < order.Count; i++)
        {
            var from = list.Places[order[i]];
            text.Append(open.Text, from.Start, open.ContentEnd(list.Items[order[i]], from) - from.Start);
            if (i == order.Count - 1) break;
            int end = open.ContentEnd(list.Items[i], list.Places[i]);
            text.Append(open.Text, end, list.Places[i + 1].Start - end);
        }

        return new(list.Places[0].Start, open.ContentEnd(list.Items[^1], list.Places[^1]), text.ToString());
    }

    // The dash of an item; -1: it does not stand directly before it.
    private static int Dash(OpenText open, ListNode list, int index)
    {
        int at = list.Places[index].Start - 1;
        while (at >= 0 && open.Text[at] is ' ' or '\n' or '\r') at--;
        return at >= 0 && open.Text[at] == '-' ? at : -1;
    }
}
