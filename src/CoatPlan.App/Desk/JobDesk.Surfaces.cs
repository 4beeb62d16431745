using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.App.Desk;

/// <content>The table of surfaces.</content>
internal sealed partial class JobDesk
{
    private void DoAtSurfaces(Word word)
    {
        switch (word)
        {
            case Word.Left:
                ColumnAt = (SurfaceColumn)Math.Max((int)ColumnAt - 1, 0);
                break;
            case Word.Right:
                ColumnAt = (SurfaceColumn)Math.Min((int)ColumnAt + 1, (int)SurfaceColumn.Ready);
                break;
            case Word.Enter:
                ChangeChosen();
                break;
            case Word.Inside when Surface is not null:
                Go(DeskPlace.Fields);
                fields.GoTo(JobPath.Root.Key("surfaces").At(SurfaceAt));
                break;
            case Word.Add:
                OfferPieces();
                break;
            case Word.Copy:
                OnChosen(SurfaceEdits.Copy, "copy", SurfaceAt + 1);
                break;
            case Word.Delete:
                DeleteChosen();
                break;
            case Word.MoveUp:
                MoveChosen(SurfaceAt - 1);
                break;
            case Word.MoveDown:
                MoveChosen(SurfaceAt + 1);
                break;
            default:
                SurfaceAt = RowChoice.Moved(SurfaceAt, word, Job?.Surfaces.Length ?? 0);
                break;
        }
    }

    private void ChangeChosen()
    {
        if (Surface is not { } surface)
        {
            Message = "no surface to change; add one";
            return;
        }

        switch (ColumnAt)
        {
            case SurfaceColumn.Piece:
                TypeInCell(surface, "name", "Name of the piece");
                break;
            case SurfaceColumn.Count:
                TypeInCell(surface, "count", "Number of pieces, such as 2");
                break;
            case SurfaceColumn.Area:
                TypeInCell(surface, "area", surface.Shapes.IsEmpty
                    ? "Area of one piece with its unit, such as 8 ft2 or 0.7 m2"
                    : "Area of one piece, such as 8 ft2 or 0.7 m2; it takes the place of the shapes");
                break;
            case SurfaceColumn.Material:
                PickOne("material", "What it is made of", PresetTables.Materials(Catalogue), surface.Material);
                break;
            case SurfaceColumn.Finish:
                PickOne("finish", "What is on it now", PresetTables.Finishes(Catalogue), surface.Finish);
                break;
            case SurfaceColumn.Condition:
                PickConditions(surface);
                break;
            case SurfaceColumn.System:
                PickSystem(surface);
                break;
            default:
                Message = "this follows from the plan; change what it follows from";
                break;
        }
    }

    private void TypeInCell(JobSurface surface, string key, string asks)
    {
        var (at, typedBefore) = (SurfaceAt, SurfaceEdits.Typed(surface, key));
        Typing = new LineEdit
        {
            Asks = asks,
            InCell = true,
            Typed = typedBefore,
            Take = typed => typed == typedBefore ? null : Try(Edited(typed), $"change of {key} of {surface.Name}"),
        };

        JobEditing Edited(string typed) => key == "area"
            ? SurfaceEdits.SetArea(edited.Document, at, typed, hasShapes: !surface.Shapes.IsEmpty)
            : SurfaceEdits.Set(edited.Document, at, key, typed);
    }

    private void PickOne(string key, string asks, PresetTable table, string chosen)
    {
        var at = SurfaceAt;
        Picking = new Picker(asks, [.. table.Rows.Select(row => new PickerRow(row.Word, row.Means))], [chosen],
            picked => picked is [var word] ? Try(SurfaceEdits.Set(edited.Document, at, key, word), $"change of {key}") : "nothing fits what was typed");
    }

    private void PickConditions(JobSurface surface)
    {
        var at = SurfaceAt;
        var rows = PresetTables.Conditions(Catalogue).Rows;
        Picking = new Picker("What is wrong with it; mark all that apply", [.. rows.Select(row => new PickerRow(row.Word, row.Means))], surface.Conditions,
            picked => picked.IsEmpty ? "nothing fits what was typed" : Try(SurfaceEdits.SetList(edited.Document, at, "condition", picked), "change of condition"))
        {
            Several = true,
        };
    }

    private void PickSystem(JobSurface surface)
    {
        var at = SurfaceAt;
        Picking = new Picker("What goes on it", [.. Job!.Systems.Select(system => new PickerRow(system.Key, MeaningOf(system)))], [surface.System],
            picked => picked is [var word] ? Try(SurfaceEdits.Set(edited.Document, at, "system", word), "change of system") : "nothing fits what was typed");
    }

    /// <summary>What a paint system puts on, first to last.</summary>
    /// <param name="system">The system.</param>
    public string MeaningOf(PaintSystem system) => string.Join(", then ", system.Layers.Select(layer =>
    {
        var name = Plan?.Supplies.FirstOrDefault(supply => supply.Product == layer.Product)?.Name ?? layer.Product;
        var coats = layer.Coats is { } count ? Written.Count(count, "coat", "coats") : "the label's coats";
        return $"{name}, {coats}{(layer.OnlyBare ? ", bare spots only" : "")}";
    }));

    private void OfferPieces()
    {
        if (Job is null)
            return;

        var rows = PresetTables.Pieces(Catalogue, Job.Units).Rows.Select(row => new PickerRow(row.Word, row.Means));
        Picking = new Picker("Which piece to add", [new PickerRow(SurfaceEdits.AnotherPiece, "name and area to be typed"), .. rows], [],
            picked => picked is [var word] ? AddPiece(word) : "nothing fits what was typed");
    }

    private string? AddPiece(string word)
    {
        var piece = Catalogue.Pieces.FirstOrDefault(known => known.Name == word);
        var system = Surface?.System ?? Job!.Systems.FirstOrDefault()?.Key;
        if (system is null)
            return "no system says yet what goes on it; the job needs one under systems";

        var at = Job!.Surfaces.IsEmpty ? 0 : SurfaceAt + 1;
        var refused = Try(SurfaceEdits.Insert(edited.Document, at, piece, system, Job.Units), $"new surface {word}");
        if (refused is null)
            (SurfaceAt, ColumnAt) = (at, piece is null ? SurfaceColumn.Piece : SurfaceColumn.Count);
        return refused;
    }

    private void DeleteChosen()
    {
        if (Job?.Surfaces.Length == 1)
        {
            Message = "a job has one surface at least; change this one instead";
            return;
        }

        var name = Surface?.Name;
        OnChosen(SurfaceEdits.Delete, "deletion", SurfaceAt);
        if (Message.Length == 0)
            Message = $"deleted: {name}; undo brings it back";
    }

    private void MoveChosen(int to)
    {
        if (to < 0 || to >= (Job?.Surfaces.Length ?? 0))
            return;

        OnChosen((document, at) => SurfaceEdits.Move(document, at, to), "move", to);
    }

    private void OnChosen(Func<JobDocument, int, JobEditing> edit, string what, int chosenThen)
    {
        if (Surface is not { } surface)
        {
            Message = "no surface is chosen";
            return;
        }

        if (Try(edit(edited.Document, SurfaceAt), $"{what} of {surface.Name}") is { } refused)
            Message = refused;
        else
            SurfaceAt = chosenThen;
    }
}
