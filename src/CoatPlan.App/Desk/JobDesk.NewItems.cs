using CoatPlan.App.Wording;
using CoatPlan.Areas;
using CoatPlan.Jobs;

namespace CoatPlan.App.Desk;

/// <content>Something new in a list or map of the job: what it needs is asked for, one value after the other, and then it is put in whole.</content>
internal sealed partial class JobDesk
{
    /// <summary>What the open shapes come to, each and together; empty where no shapes are open.</summary>
    public string ShapesSay
    {
        get
        {
            if (Job is not { } job || fields.Path.Steps is not [{ Key: "surfaces" }, { Key: null, Index: var at }, { Key: "shape" }, ..] || at >= job.Surfaces.Length || job.Surfaces[at].Shapes.IsEmpty)
                return "";

            var shapes = job.Surfaces[at].Shapes;
            var each = string.Join(" + ", shapes.Select(shape => Written.Area(ShapeArea.Of(shape).SquareMeters, job.Units)));
            return $"{each}{(shapes.Length > 1 ? $" = {Written.Area(ShapeArea.Of(shapes).SquareMeters, job.Units)}" : "")} on one {job.Surfaces[at].Name}";
        }
    }

    private void AddField(Outline outline)
    {
        if (outline.TakesKeys)
            AskForKey(outline);
        else if (NewItem.IsShape(outline.Path))
            OfferShapes(outline);
        else if (outline.Item == OutlineKind.Map)
            AskForRest(NewItem.Asked(outline.Path, edited.At(outline.Path.At(outline.Rows.Length))), [], NewOne(outline, map => EditItem(outline, map)));
        else
            AskForItem(outline);
    }

    private void AskForItem(Outline outline) => Typing = new LineEdit
    {
        Asks = outline.Example.Length > 0 ? $"A value, such as {outline.Example}" : "A value",
        InCell = true,
        Example = outline.Example,
        Typed = "",
        Take = typed => TryItem(outline, ValueOf(outline.Item, typed)),
    };

    private void AskForKey(Outline outline) => Typing = new LineEdit
    {
        Asks = KeyAsks(outline.Path),
        InCell = true,
        Typed = "",
        Take = typed => AddUnder(outline, typed.Trim()),
    };

    private static string KeyAsks(JobPath path) => path.Steps is [.., { Key: { } key }]
        ? key switch
        {
            "hours" => "Which days? Mon, Mon-Fri or 2027-05-14",
            "have" or "consumables" => "What? A key of a product, or a consumable such as masking tape",
            "solvents" => "Which solvent? A name or a CAS number",
            _ => "Its name, to be called by elsewhere in the job",
        }
        : "Its name";

    private string? AddUnder(Outline outline, string name)
    {
        if (name.Length == 0)
            return "it needs a name";
        if (outline.Rows.Any(row => row.Name == name))
            return $"there is a {name} already";

        var path = outline.Path.Key(name);
        switch (outline.Item)
        {
            case OutlineKind.Map:
                AskForRest(NewItem.Asked(outline.Path, edited.At(path)), [], new NewValue(map => JobEdit.Set(edited.Document, path, map), $"new {name}", () => fields.Open(path)));
                break;
            case OutlineKind.List:
                AskForRest(NewItem.Asked(outline.Path, edited.At(path.At(0))), [], new NewValue(map => JobEdit.Set(edited.Document, path, new ListValue([map])), $"new {name}", () => fields.Open(path)));
                break;
            default:
                TypeField(new OutlineRow { Path = path, Name = name, Kind = outline.Item, Value = "", IsSet = false, Says = "", Example = outline.Example });
                break;
        }

        return null;
    }

    private void OfferShapes(Outline outline)
    {
        var kinds = edited.At(outline.Path.At(outline.Rows.Length)).Rows;
        Picking = new Picker("Which shape? Several add up", [.. kinds.Select(kind => new PickerRow(kind.Name, SizesOf(kind)))], [], picked =>
        {
            if (kinds.FirstOrDefault(kind => picked is [var word] && kind.Name == word) is not { } kind)
                return "nothing fits what was typed";

            AskForRest([.. edited.At(kind.Path).Rows.Where(row => row.IsRequired)], [],
                NewOne(outline, sizes => EditItem(outline, new MapValue([KeyValuePair.Create<string, JobValue>(kind.Name, sizes)]))));
            return null;
        });
    }

    private string SizesOf(OutlineRow kind) => string.Join(", ", edited.At(kind.Path).Rows.Where(row => row.Kind is not OutlineKind.List).Select(row => row.IsRequired ? row.Name : $"({row.Name})"));

    // Asks for the first row that is left, and after the last puts everything in at once.
    private string? AskForRest(ImmutableArray<OutlineRow> left, ImmutableArray<KeyValuePair<string, JobValue>> have, NewValue made)
    {
        if (left.IsEmpty)
            return Put(made, new MapValue(have));

        var row = left[0];
        var words = WordsFor(row);
        if (words.IsEmpty)
        {
            Typing = new LineEdit
            {
                Asks = $"{AsksFor(row)}{(row.IsRequired ? "" : " (nothing: left out)")}",
                InCell = true,
                Example = row.Example,
                Typed = "",
                Take = typed => typed.Trim().Length > 0 ? Next(ValueOf(row.Kind, typed)) : row.IsRequired ? $"{row.Name} is needed" : AskForRest(left[1..], have, made),
            };
        }
        else
        {
            Picking = new Picker(AsksFor(row), [.. words.Select(WithMeaning)], [],
                picked => picked.IsEmpty ? "nothing fits what was typed" : Next(row.Kind == OutlineKind.Words ? JobValue.ListOf(picked.AsSpan()) : JobValue.Of(picked[0])))
            {
                Several = row.Kind == OutlineKind.Words,
                Note = row.IsRequired ? "" : "it can be changed later",
            };
        }

        return null;

        string? Next(JobValue value)
        {
            var now = have.Add(KeyValuePair.Create(row.Name, value));
            return WrongIn(made.Edit(new MapValue(now)), value) ?? AskForRest(left[1..], now, made);
        }
    }

    // A value is judged where it would stand before the next one is asked for.
    private string? WrongIn(JobEditing editing, JobValue value) => value is TextValue { Text: var typed } ? edited.WrongIn(editing, typed) : null;

    private NewValue NewOne(Outline outline, Func<MapValue, JobEditing> edit) => new(edit, $"new item of {outline.Path}", () => fields.At = outline.Rows.Length);

    private string? Put(NewValue made, MapValue value)
    {
        var refused = TryUnfinished(made.Edit(value), made.What, typed: null);
        if (refused is null)
            made.Then();
        return refused;
    }

    private sealed record NewValue(Func<MapValue, JobEditing> Edit, string What, Action Then);
}
