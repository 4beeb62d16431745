using CoatPlan.Jobs.Reading;
using CoatPlan.Jobs.Yaml;

namespace CoatPlan.Jobs;

/// <summary>Tells what a job file holds and what it could hold, level by level, for those who fill it in on a screen.</summary>
public static class JobOutline
{
    private static readonly ImmutableArray<string> Flags = ["true", "false"];

    /// <summary>What is at a level of a job file.</summary>
    /// <param name="document">The file; what is wrong with it is for <see cref="JobReader"/> to say.</param>
    /// <param name="path">The map or list; one that is not written there yet has an outline too.</param>
    /// <param name="vocabulary">The known words.</param>
    public static Outline At(JobDocument document, JobPath path, Vocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(vocabulary);

        var node = document.Root;
        Form form = new MapForm(() => JobKeys.Job);
        foreach (var step in path.Steps)
        {
            form = Inner(form, step);
            node = Inner(node, step);
        }

        return form switch
        {
            MapForm map => Known(path, node as MapNode, map.Table(), vocabulary),
            KeyedForm keyed => Keyed(path, node as MapNode, keyed, vocabulary),
            ListForm list => Listed(path, node as ListNode, list, vocabulary),
            _ => new Outline(path, [], TakesKeys: false, TakesItems: false, OutlineKind.Value, ""),
        };
    }

    private static Outline Known(JobPath path, MapNode? map, KeyTable table, Vocabulary vocabulary) => new(
        path,
        [.. table.Keys.Select(key => Row(path.Key(key.Name), key.Name, key.Form, map?.Find(key.Name)?.Value, key.Says, vocabulary) with { IsRequired = key.IsRequired })],
        TakesKeys: false,
        TakesItems: false,
        OutlineKind.Value,
        "");

    private static Outline Keyed(JobPath path, MapNode? map, KeyedForm keyed, Vocabulary vocabulary) => new(
        path,
        [.. (map?.Entries ?? []).Select(entry => Row(path.Key(entry.Key.Text), entry.Key.Text, keyed.Value, entry.Value, "", vocabulary))],
        TakesKeys: true,
        TakesItems: false,
        KindOf(keyed.Value),
        keyed.Value.Example);

    private static Outline Listed(JobPath path, ListNode? list, ListForm form, Vocabulary vocabulary) => new(
        path,
        [.. (list?.Items ?? []).Select((item, index) => Row(path.At(index), (index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), form.Item, item, "", vocabulary))],
        TakesKeys: false,
        TakesItems: true,
        KindOf(form.Item),
        form.Item.Example);

    private static OutlineRow Row(JobPath path, string name, Form form, Node? node, string says, Vocabulary vocabulary) => new()
    {
        Path = path,
        Name = name,
        Kind = KindOf(form),
        Value = node is null ? "" : Written(node),
        Values = ValuesOf(node),
        IsSet = node is not null and not TextNode { IsMissing: true },
        Says = says,
        Example = KindOf(form) is OutlineKind.Map or OutlineKind.List ? "" : form.Example,
        Words = WordsOf(form, vocabulary),
    };

    private static OutlineKind KindOf(Form form) => form switch
    {
        MapForm or KeyedForm => OutlineKind.Map,
        ListForm => OutlineKind.List,
        OneOrListForm { Item: WordForm } => OutlineKind.Words,
        OneOrListForm => OutlineKind.Values,
        WordForm or FlagForm => OutlineKind.Word,
        _ => OutlineKind.Value,
    };

    private static ImmutableArray<string> WordsOf(Form form, Vocabulary vocabulary) => form switch
    {
        WordForm words => words.Words(vocabulary),
        OneOrListForm { Item: WordForm words } => words.Words(vocabulary),
        FlagForm => Flags,
        _ => [],
    };

    private static ImmutableArray<string> ValuesOf(Node? node) => node switch
    {
        TextNode { IsMissing: false } text => [text.Text],
        ListNode list => [.. list.Items.OfType<TextNode>().Select(item => item.Text)],
        _ => [],
    };

    private static string Written(Node node) => node switch
    {
        TextNode text => text.Text,
        ListNode list => string.Join(", ", list.Items.Select(Written)),
        MapNode map => string.Join(", ", map.Entries.Select(entry => $"{entry.Key.Text}: {Bracketed(entry.Value)}")),
        _ => "",
    };

    private static string Bracketed(Node node) => node switch
    {
        ListNode => $"[{Written(node)}]",
        MapNode => $"{{{Written(node)}}}",
        _ => Written(node),
    };

    private static Form Inner(Form form, PathStep step) => (form, step.Key) switch
    {
        (MapForm map, { } key) => map.Table().Find(key)?.Form ?? new TextForm(),
        (KeyedForm keyed, not null) => keyed.Value,
        (ListForm list, null) => list.Item,
        (OneOrListForm list, null) => list.Item,
        _ => new TextForm(),
    };

    private static Node? Inner(Node? node, PathStep step) => (node, step.Key) switch
    {
        (MapNode map, { } key) => map.Find(key)?.Value,
        (ListNode list, null) when step.Index < list.Items.Length => list.Items[step.Index],
        _ => null,
    };
}
