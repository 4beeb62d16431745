using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Jobs.Editing;

/// <summary>The same edits on values alone: what a text must say after it was edited.</summary>
internal static class ModelEdit
{
    /// <summary>What a node says.</summary>
    public static JobValue Of(Node node) => node switch
    {
        TextNode text => new TextValue(text.Text),
        ListNode list => new ListValue([.. list.Items.Select(Of)]),
        MapNode map => new MapValue([.. map.Entries.Select(entry => KeyValuePair.Create(entry.Key.Text, Of(entry.Value)))]),
        _ => throw new ArgumentOutOfRangeException(nameof(node), node, "A text, a list or a map."),
    };

    /// <summary>The value with one value in it set.</summary>
    public static JobValue Set(JobValue root, ReadOnlySpan<PathStep> path, JobValue value)
    {
        if (path.IsEmpty) return value;
        if (path[0].Key is { } key)
        {
            var map = root as MapValue ?? new([]);
            var inner = Set(map.Find(key) ?? new MapValue([]), path[1..], value);
            int at = IndexOf(map, key);
            var entry = KeyValuePair.Create(key, inner);
            return new MapValue(at < 0 ? map.Entries.Add(entry) : map.Entries.SetItem(at, entry));
        }

        var items = ((ListValue)root).Items;
        return new ListValue(items.SetItem(path[0].Index, Set(items[path[0].Index], path[1..], value)));
    }

    /// <summary>The value without one value in it.</summary>
    public static JobValue Remove(JobValue root, ReadOnlySpan<PathStep> path)
    {
        bool last = path.Length == 1;
        if (path[0].Key is { } key)
        {
            var map = (MapValue)root;
            int at = IndexOf(map, key);
            return new MapValue(last ? map.Entries.RemoveAt(at) : map.Entries.SetItem(at, KeyValuePair.Create(key, Remove(map.Entries[at].Value, path[1..]))));
        }

        var items = ((ListValue)root).Items;
        int index = path[0].Index;
        return new ListValue(last ? items.RemoveAt(index) : items.SetItem(index, Remove(items[index], path[1..])));
    }

    /// <summary>The value with the list at a path changed.</summary>
    public static JobValue Relist(JobValue root, ReadOnlySpan<PathStep> path, Func<ImmutableArray<JobValue>, ImmutableArray<JobValue>> change)
    {
        var at = root;
        foreach (var step in path) at = step.Key is { } key ? ((MapValue)at).Find(key)! : ((ListValue)at).Items[step.Index];
        return Set(root, path, new ListValue(change(((ListValue)at).Items)));
    }

    private static int IndexOf(MapValue map, string key)
    {
        for (int i = 0; i < map.Entries.Length; i++)
        {
            if (map.Entries[i].Key == key) return i;
        }

        return -1;
    }
}
