using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Jobs.Editing;

/// <summary>Puts entries into maps, and takes them out.</summary>
internal static class MapEdit
{
    /// <summary>Puts an entry into a map, behind the entry that comes before it in the contract.</summary>
    /// <param name="open">The text.</param>
    /// <param name="found">The map.</param>
    /// <param name="key">The new key.</param>
    /// <param name="value">Its value.</param>
    /// <param name="order">The keys of the map in the order of the contract; empty: at the end.</param>
    public static TextChange Insert(OpenText open, Found found, string key, JobValue value, ImmutableArray<string> order)
    {
        var map = (MapNode)found.Node;
        var writer = new ValueWriter(open.IsJson || IsQuoted(open, map));
        if (map.Entries.IsEmpty) return Inside(open, found, writer.Entry(key, value, isInFlow: true));
        var before = Predecessor(map, key, order);
        int end = Math.Max(open.BehindColon(before), open.ContentEnd(before.Value, before.At));
        if (map.IsFlow) return new(end, end, "," + Gap(open, map) + writer.Entry(key, value, isInFlow: true));
        string line = new string(' ', map.Entries[0].Key.Mark.Column - 1) + writer.Entry(key, value, isInFlow: false);
        bool isBlockText = before.Value is TextNode { IsBlock: true } && !before.At.IsAlias;
        if (isBlockText && before.At.End > 0 && open.Text[before.At.End - 1] == '\n')
        {
            int next = open.LineStart(before.At.End);
            return new(next, next, line + open.NewLine);
        }

        int lineEnd = open.LineEnd(end);
        return new(lineEnd, lineEnd, open.NewLine + line);
    }

    /// <summary>Takes an entry out of its map.</summary>
    public static TextChange Remove(OpenText open, Found found)
    {
        var map = (MapNode)found.Parent!.Node;
        var entry = map.Entries[found.Index];
        int end = Math.Max(open.BehindColon(entry), open.ContentEnd(entry.Value, entry.At));
        bool isLast = found.Index == map.Entries.Length - 1;
        if (map.IsFlow)
        {
            if (!isLast) return new(entry.Key.Start, map.Entries[found.Index + 1].Key.Start, "");
            if (found.Index == 0) return new(entry.Key.Start, end, "");
            var before = map.Entries[found.Index - 1];
            return new(Math.Max(open.BehindColon(before), open.ContentEnd(before.Value, before.At)), end, "");
        }

        if (map.Entries.Length == 1) return new(entry.Key.Start, end, "{}");
        int lineStart = open.LineStart(entry.Key.Start);
        if (open.IsBlank(lineStart, entry.Key.Start)) return new(lineStart, open.NextLine(end), "");

        // The first key of a list item stands behind the dash: the next key takes its place, unless a comment stands between.
        int next = map.Entries[found.Index + 1].Key.Start;
        bool joins = open.IsBlank(open.LineEnd(end), next) && open.IsBlank(end, open.LineEnd(end));
        return new(entry.Key.Start, joins ? next : end, "");
    }

    private static TextChange Inside(OpenText open, Found found, string entry)
    {
        int brace = open.Text.IndexOf('{', found.At.Start);
        return new(brace + 1, brace + 1, entry);
    }

    private static MapEntry Predecessor(MapNode map, string key, ImmutableArray<string> order)
    {
        int own = order.IndexOf(key);
        if (own < 0) return map.Entries[^1];
        var earlier = map.Entries.Where(entry => order.IndexOf(entry.Key.Text) is >= 0 and var place && place < own).ToArray();
        return earlier.Length == 0 ? map.Entries[^1] : earlier.MaxBy(entry => order.IndexOf(entry.Key.Text))!;
    }

    private static bool IsQuoted(OpenText open, MapNode map) => map.IsFlow && map.Entries.Length > 0 && map.Entries.All(entry => open.Text[entry.Key.Start] == '"');

    // What stands between a comma and a key in this map: a blank, or a line end and the keys' indent.
    private static string Gap(OpenText open, MapNode map)
    {
        int key = map.Entries[^1].Key.Start;
        int lineStart = open.LineStart(key);
        return open.IsBlank(lineStart, key) && lineStart > 0 ? open.NewLine + open.Text[lineStart..key] : " ";
    }
}
