using CoatPlan.Jobs;

namespace CoatPlan.App.Desk;

/// <content>Every field of the job.</content>
internal sealed partial class JobDesk
{
    private void DoAtFields(Word word)
    {
        var outline = Outline;
        switch (word)
        {
            case Word.Left:
                fields.Close();
                break;
            case Word.Enter or Word.Right when fields.At < outline.Rows.Length:
                ChangeField(outline.Rows[fields.At]);
                break;
            case Word.Enter or Word.Right or Word.Add when outline.TakesKeys || outline.TakesItems:
                AddField(outline);
                break;
            case Word.Delete when fields.At < outline.Rows.Length:
                DeleteField(outline.Rows[fields.At]);
                break;
            case Word.Copy or Word.MoveUp or Word.MoveDown:
                Rearrange(outline, word);
                break;
            default:
                fields.At = RowChoice.Moved(fields.At, word, JobFields.RowsOf(outline));
                break;
        }
    }

    private void ChangeField(OutlineRow row)
    {
        var words = WordsFor(row);
        switch (row.Kind)
        {
            case OutlineKind.Map or OutlineKind.List:
                fields.Open(row.Path);
                break;
            case OutlineKind.Words:
                Picking = new Picker(AsksFor(row), [.. words.Select(WithMeaning)], row.Values,
                    picked => picked.IsEmpty ? "nothing fits what was typed" : TryField(row.Path, JobValue.ListOf(picked.AsSpan())))
                {
                    Several = true,
                };
                break;
            default:
                if (words.IsEmpty)
                    TypeField(row);
                else
                    Picking = new Picker(AsksFor(row), [.. words.Select(WithMeaning)], row.Values,
                        picked => picked is [var word] ? TryField(row.Path, JobValue.Of(word)) : "nothing fits what was typed");
                break;
        }
    }

    // Items of a list are copied and moved; what stands under keys has no order.
    private void Rearrange(Outline outline, Word word)
    {
        var to = word switch { Word.Copy => fields.At + 1, Word.MoveUp => fields.At - 1, _ => fields.At + 1 };
        if (!outline.TakesItems || fields.At >= outline.Rows.Length)
            Message = "an item of a list is copied and moved; none is chosen";
        else if (word != Word.Copy && (to < 0 || to >= outline.Rows.Length))
            Message = "it is at the end already";
        else if (TryUnfinished(word == Word.Copy ? JobEdit.Copy(edited.Document, outline.Path, fields.At) : JobEdit.Move(edited.Document, outline.Path, fields.At, to), $"{(word == Word.Copy ? "copy" : "move")} in {outline.Path}", typed: null) is { } refused)
            Message = refused;
        else
            fields.At = to;
    }

    private void TypeField(OutlineRow row)
    {
        var before = string.Join("; ", row.Values);
        Typing = new LineEdit
        {
            Asks = row.Kind == OutlineKind.Values ? $"{AsksFor(row)}; several with ; between them" : AsksFor(row),
            InCell = true,
            Example = row.Example,
            Typed = before,
            Take = typed => typed == before ? null : TryField(row.Path, ValueOf(row.Kind, typed)),
        };
    }

    private static string AsksFor(OutlineRow row)
    {
        var example = row.Example.Length > 0 && row.Words.IsEmpty ? $", such as {row.Example}" : "";
        return row.Says.Length > 0 ? $"{row.Name}: {row.Says}{example}" : $"{row.Name}{example}";
    }

    private static JobValue ValueOf(OutlineKind kind, string typed)
    {
        var values = typed.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return kind == OutlineKind.Values && values.Length > 1 ? JobValue.ListOf(values) : JobValue.Of(typed.Trim());
    }

    // A system and a product are known by the keys that this very job gives them.
    private ImmutableArray<string> WordsFor(OutlineRow row) => row.Name switch
    {
        "system" => KeysOf("systems"),
        "product" => KeysOf("products"),
        _ => row.Words,
    };

    private ImmutableArray<string> KeysOf(string map) =>
        [.. edited.At(JobPath.Root.Key(map)).Rows.Select(row => row.Name)];

    private PickerRow WithMeaning(string word) =>
        new(word, PresetTables.Of(Catalogue, Job?.Units).SelectMany(table => table.Rows).FirstOrDefault(row => row.Word == word)?.Means ?? "");

    private void DeleteField(OutlineRow row)
    {
        if (!row.IsSet)
            Message = $"{row.Name} is not set";
        else
            Message = TryUnfinished(JobEdit.Remove(edited.Document, row.Path), $"deletion of {row.Path}", typed: null) ?? $"deleted: {row.Name}; undo brings it back";
    }

    private string? TryItem(Outline outline, JobValue value) =>
        TryUnfinished(EditItem(outline, value), $"new item of {outline.Path}", (value as TextValue)?.Text);

    private JobEditing EditItem(Outline outline, JobValue value) => outline.Rows.IsEmpty
        ? JobEdit.Set(edited.Document, outline.Path, new ListValue([value]))
        : JobEdit.Insert(edited.Document, outline.Path, outline.Rows.Length, value);

    private string? TryField(JobPath path, JobValue value) =>
        TryUnfinished(JobEdit.Set(edited.Document, path, value), $"change of {path}", (value as TextValue)?.Text);
}
