using CoatPlan.Jobs.Editing;
using CoatPlan.Jobs.Reading;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>Edits the text of a job file: outside the edited value not a byte changes.</summary>
/// <remarks>
/// Comments, the order of keys, line ends and style stay; block and flow style and JSON are all edited as they are. Each
/// edit is read again before it is handed out: a text that would say anything else is never returned. What cannot be edited
/// (an anchor that is repeated elsewhere, a text that is no YAML) is a problem.
/// </remarks>
public static class JobEdit
{
    /// <summary>Sets a value; a key that is not there yet, and maps on the way to it, are put in.</summary>
    /// <param name="document">The file.</param>
    /// <param name="path">The value; not the root.</param>
    /// <param name="value">What it shall be.</param>
    public static JobEditing Set(JobDocument document, JobPath path, JobValue value)
    {
        CheckNotRoot(path);
        ArgumentNullException.ThrowIfNull(value);
        return Edit(document, path, open => SetIn(open, path, value), model => ModelEdit.Set(model, path.Steps.AsSpan(), value));
    }

    /// <summary>Removes a key with its value, or an item of a list.</summary>
    /// <param name="document">The file.</param>
    /// <param name="path">What to remove; not the root.</param>
    public static JobEditing Remove(JobDocument document, JobPath path)
    {
        CheckNotRoot(path);
        return Edit(document, path, open => RemoveIn(open, path), model => ModelEdit.Remove(model, path.Steps.AsSpan()));
    }

    /// <summary>Puts an item into a list.</summary>
    /// <param name="document">The file.</param>
    /// <param name="list">The list.</param>
    /// <param name="index">Where it shall stand: 0 to the length of the list.</param>
    /// <param name="item">The item.</param>
    public static JobEditing Insert(JobDocument document, JobPath list, int index, JobValue item)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentNullException.ThrowIfNull(item);
        return Relist(document, list, index, open => ListEdit.Insert(open, open.Walk(list).Found, index, item), items => items.Insert(index, item));
    }

    /// <summary>Puts a copy of an item behind it, its comments included.</summary>
    /// <param name="document">The file.</param>
    /// <param name="list">The list.</param>
    /// <param name="index">The item: 0 to less than the length of the list.</param>
    public static JobEditing Copy(JobDocument document, JobPath list, int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        return Relist(document, list, index + 1, open => ListEdit.Copy(open, open.Walk(list).Found, index), items => items.Insert(index + 1, items[index]));
    }

    /// <summary>Moves an item of a list; comments directly above it go with it.</summary>
    /// <param name="document">The file.</param>
    /// <param name="list">The list.</param>
    /// <param name="from">Where it stands: 0 to less than the length of the list.</param>
    /// <param name="to">Where it shall stand once it was taken out: 0 to less than the length of the list.</param>
    public static JobEditing Move(JobDocument document, JobPath list, int from, int to)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(from);
        ArgumentOutOfRangeException.ThrowIfNegative(to);
        return Relist(document, list, Math.Max(from, to) + 1, open => ListEdit.Move(open, open.Walk(list).Found, from, to), items => items.RemoveAt(from).Insert(to, items[from]));
    }

    private static JobEditing Relist(
        JobDocument document, JobPath path, int least, Func<OpenText, TextChange?> change, Func<ImmutableArray<JobValue>, ImmutableArray<JobValue>> relist)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Edit(document, path, Checked, model => ModelEdit.Relist(model, path.Steps.AsSpan(), relist));

        TextChange? Checked(OpenText open)
        {
            var (found, steps) = open.Walk(path);
            return steps == path.Steps.Length && found.Node is ListNode list && list.Items.Length >= least ? change(open) : null;
        }
    }

    private static JobEditing Edit(JobDocument document, JobPath path, Func<OpenText, TextChange?> change, Func<JobValue, JobValue> model)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (document.Root is not { } root) return new(null, document.Problems.IsEmpty ? [Sentences.EmptyFile("a job to edit")] : document.Problems);
        if (!document.Problems.IsEmpty) return new(null, document.Problems);
        var open = new OpenText(document.Plain, root);
        if (Refusal(open, path) is { } refusal) return new(null, [refusal]);
        if (change(open) is not { } made) return new(null, [Sentences.NotEditable(path.ToString()).At(open.Walk(path).Found.Node.Mark)]);
        string mark = document.Text[..^document.Plain.Length];
        JobDocument edited = mark + made.In(document.Plain);
        bool saysIt = edited.Root is { } again && edited.Problems.IsEmpty && JobValue.Same(ModelEdit.Of(again), model(ModelEdit.Of(root)));
        return saysIt ? new(edited, []) : new(null, [Sentences.NotEditable(path.ToString()).At(open.Walk(path).Found.Node.Mark)]);
    }

    // A value with an anchor may be repeated elsewhere, and one behind an alias is: an edit would change more than it says.
    private static Problem? Refusal(OpenText open, JobPath path)
    {
        for (var found = open.Walk(path).Found; found is not null; found = found.Parent)
        {
            if (found.Node.IsMarked || found.At.IsAlias) return Sentences.SharedValue(path.ToString()).At(found.Node.Mark);
        }

        return null;
    }

    private static TextChange? SetIn(OpenText open, JobPath path, JobValue value)
    {
        var (found, steps) = open.Walk(path);
        if (steps == path.Steps.Length) return Replace(open, found, value);
        var rest = path.Steps[steps..];
        if (rest.Any(step => step.Key is null)) return null;
        var wrapped = rest[1..].Reverse().Aggregate(value, (inner, step) => new MapValue([KeyValuePair.Create(step.Key!, inner)]));
        if (found.Node is MapNode) return MapEdit.Insert(open, found, rest[0].Key!, wrapped, Order(path.Steps.AsSpan()[..steps]));
        bool isNothing = found.Node is TextNode { IsMissing: true } or TextNode { IsNull: true };
        return isNothing ? Replace(open, found, new MapValue([KeyValuePair.Create(rest[0].Key!, wrapped)])) : null;
    }

    private static TextChange? RemoveIn(OpenText open, JobPath path)
    {
        var (found, steps) = open.Walk(path);
        if (steps < path.Steps.Length || found.Parent is not { } parent) return null;
        return parent.Node is MapNode ? MapEdit.Remove(open, found) : ListEdit.Remove(open, parent, found.Index);
    }

    private static TextChange Replace(OpenText open, Found found, JobValue value)
    {
        bool keepsQuotes = found.Node is TextNode { IsPlain: false, IsBlock: false } && value is TextValue && !open.IsJson;
        string written = keepsQuotes ? ValueWriter.Quoted(((TextValue)value).Text) : new ValueWriter(open.IsJson).InLine(value, found.IsInFlow);
        int end = open.ContentEnd(found.Node, found.At);
        bool isBlock = found.Node is MapNode { IsFlow: false } or ListNode { IsFlow: false };
        if (isBlock && found.Entry is { } entry)
        {
            int colon = open.BehindColon(entry);
            bool startsBelow = open.LineEnd(colon) < found.At.Start;
            string comment = startsBelow ? open.Text[colon..open.LineEnd(colon)].TrimEnd() : "";
            return new(colon, end, " " + written + comment);
        }

        bool needsBlank = found.At.Start > 0 && found.At.Start == end && open.Text[found.At.Start - 1] is ':' or '-';
        return new(found.At.Start, end, (needsBlank ? " " : "") + written);
    }

    // The keys of the map at a path, in the order of the contract; empty: a map whose keys the person chooses.
    private static ImmutableArray<string> Order(ReadOnlySpan<PathStep> path)
    {
        Form form = new MapForm(() => JobKeys.Job);
        foreach (var step in path)
        {
            form = Inner(form, step);
        }

        return form is MapForm map ? [.. map.Table().Keys.Select(key => key.Name)] : [];
    }

    private static Form Inner(Form form, PathStep step) => (form, step.Key) switch
    {
        (MapForm map, { } key) => map.Table().Find(key)?.Form ?? form,
        (KeyedForm keyed, not null) => keyed.Value,
        (ListForm list, null) => list.Item,
        (OneOrListForm list, null) => list.Item,
        _ => new TextForm(),
    };

    private static void CheckNotRoot(JobPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (path.Steps.IsEmpty) throw new ArgumentException("The whole job is not one value; name a value in it.", nameof(path));
    }
}
