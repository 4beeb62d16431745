using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Presets;
using CoatPlan.Problems;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Pdf;

namespace CoatPlan.App.Desk;

/// <summary>The open job with its history, its newest plan, what is chosen and what is asked: everything the terminal UI decides, without a terminal.</summary>
internal sealed class JobDesk
{
    private const int PageRows = 10;

    private static readonly int PlaceCount = Enum.GetValues<DeskPlace>().Length;

    private readonly Workshop workshop;

    private readonly Replanner sketcher;

    private readonly Replanner replanner;

    private readonly History history;

    private readonly JobFields fields = new();

    private string? keptSafe;

    /// <summary>A desk with a job on it.</summary>
    /// <param name="file">The job's file.</param>
    /// <param name="workshop">Reads jobs and plans them.</param>
    /// <param name="background">Runs something away from the person's keys; tests run it at once.</param>
    /// <param name="foreground">Runs something where the desk may be touched.</param>
    public JobDesk(JobFile file, Workshop workshop, Action<Action> background, Action<Action> foreground)
    {
        File = file;
        this.workshop = workshop;
        sketcher = new Replanner(workshop.Sketch, background, foreground);
        replanner = new Replanner(workshop.Plan, background, foreground);
        history = new History(file.Text);
        Reading = workshop.Read(file.Text, file.Name, file.Path);
        OfferWhatWasLeftBehind();
        Replan();
    }

    /// <summary>Something that is drawn may have changed.</summary>
    public event Action? Changed;

    /// <summary>The job's file.</summary>
    public JobFile File { get; }

    /// <summary>The tables of the presets in use.</summary>
    public Catalogue Catalogue => workshop.Trade.Catalogue;

    /// <summary>The job's text.</summary>
    public string Text => history.Text;

    /// <summary>What was read from the text.</summary>
    public IntakeResult Reading { get; private set; }

    /// <summary>The job; null where its text holds mistakes.</summary>
    public Job? Job => Reading.Ready?.Job;

    /// <summary>The newest plan; that of an earlier text while <see cref="Planning"/>, null where there never was one.</summary>
    public Plan? Plan { get; private set; }

    /// <summary>Whether a plan of the newest text is being made.</summary>
    public bool Planning => sketcher.Busy;

    /// <summary>Whether the newest plan is still being made better.</summary>
    public bool Improving => replanner.Busy;

    /// <summary>Why the newest text could not be planned, where that is an error of the program; null otherwise.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Whether the text differs from the file.</summary>
    public bool Unsaved => Text != File.Text;

    /// <summary>Whether the person wants to leave the program, and nothing is lost by it.</summary>
    public bool Left { get; private set; }

    /// <summary>The place that is open.</summary>
    public DeskPlace Place { get; private set; }

    /// <summary>The chosen surface, from 0.</summary>
    public int SurfaceAt { get; private set; }

    /// <summary>The chosen column of the surfaces.</summary>
    public SurfaceColumn ColumnAt { get; private set; }

    /// <summary>The chosen step, from 0.</summary>
    public int StepAt { get; private set; }

    /// <summary>The chosen row of the supplies, cans first, from 0.</summary>
    public int SupplyAt { get; private set; }

    /// <summary>The first row shown of a place that is read and not chosen from.</summary>
    public int ReadFrom { get; private set; }

    /// <summary>The sheets of the newest plan; empty where there is none.</summary>
    public ImmutableArray<Sheet> Sheets => Plan is { } plan ? SheetSet.Of(plan) : [];

    /// <summary>The sheet that is shown, from 0.</summary>
    public int SheetAt { get; private set; }

    /// <summary>The map or list of the job's fields that is open.</summary>
    public Outline Outline => JobOutline.At(Text, fields.Path, Catalogue.Vocabulary);

    /// <summary>The chosen row of it, from 0.</summary>
    public int FieldAt => fields.At;

    /// <summary>How much wider the hours of the timeline are than they need to be: 0 shows whole days.</summary>
    public int Zoom { get; private set; }

    /// <summary>What was done last, or what went wrong; empty for nothing.</summary>
    public string Message { get; private set; } = "";

    /// <summary>A value that is being typed; null for none.</summary>
    public LineEdit? Typing { get; private set; }

    /// <summary>A list that is being picked from; null for none.</summary>
    public Picker? Picking { get; private set; }

    /// <summary>A question that waits for its answer; null for none.</summary>
    public Question? Asking { get; private set; }

    /// <summary>Whether the page with every key is open.</summary>
    public bool Helping { get; private set; }

    /// <summary>What was made of the readings before a coat; null where none is open.</summary>
    public GoNoGo? Judged { get; private set; }

    /// <summary>What undo would take back; null for nothing.</summary>
    public string? Undoable => history.Undoable;

    /// <summary>The chosen surface; null where there is none.</summary>
    public JobSurface? Surface => Job is { } job && SurfaceAt < job.Surfaces.Length ? job.Surfaces[SurfaceAt] : null;

    /// <summary>The chosen surface as planned; null where there is none.</summary>
    public PlanSurface? Planned => Surface is { } surface ? Plan?.Surfaces.FirstOrDefault(planned => planned.Id == surface.Id) : null;

    /// <summary>The chosen step; null where there is none.</summary>
    public PlanStep? Step => Plan is { } plan && StepAt < plan.Steps.Length ? plan.Steps[StepAt] : null;

    /// <summary>Does what is asked.</summary>
    /// <param name="word">What is asked.</param>
    public void Do(Word word)
    {
        if (Judged is not null)
            Judged = null;
        else if (Asking is not null)
            Answer(word);
        else if (Helping)
            ReadHelp(word);
        else if (Picking is { } picker)
            Pick(picker, word);
        else if (Typing is not null && word is Word.Back)
            StopTyping("nothing changed");
        else
            DoAtPlace(word);

        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Takes what was typed for the value that is asked for.</summary>
    /// <param name="typed">What was typed.</param>
    /// <returns>Whether it was taken; otherwise the complaint stands in <see cref="Typing"/> with what was typed.</returns>
    public bool Take(string typed)
    {
        if (Typing is not { } edit)
            return false;

        // What is typed may ask for more; only an edit that asked for nothing else is closed.
        edit.Typed = typed;
        edit.Complaint = edit.Take(typed);
        if (edit.Complaint is null && Typing == edit)
            Typing = null;
        KeepInside();
        Changed?.Invoke();
        return edit.Complaint is null;
    }

    /// <summary>Gives the answer with a letter; does nothing where no answer has it.</summary>
    /// <param name="letter">The letter.</param>
    public void Answer(char letter)
    {
        if (Asking?.Answers.FirstOrDefault(answer => answer.Letter == char.ToLowerInvariant(letter)) is { } answer)
            Give(answer);
        Changed?.Invoke();
    }

    /// <summary>Narrows the list that is being picked from.</summary>
    /// <param name="text">What was typed.</param>
    public void Narrow(string text)
    {
        Picking?.Type(text);
        Changed?.Invoke();
    }

    /// <summary>Widens the list that is being picked from.</summary>
    public void Widen()
    {
        Picking?.Erase();
        Changed?.Invoke();
    }

    /// <summary>Chooses a surface and a column, as with a mouse.</summary>
    /// <param name="surface">The surface, from 0.</param>
    /// <param name="column">The column.</param>
    public void Choose(int surface, SurfaceColumn column)
    {
        (SurfaceAt, ColumnAt) = (surface, column);
        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Chooses a step, as with a mouse.</summary>
    /// <param name="step">The step, from 0.</param>
    public void ChooseStep(int step)
    {
        StepAt = step;
        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Opens a list to pick from.</summary>
    /// <param name="picker">The list.</param>
    public void Offer(Picker picker)
    {
        Picking = picker;
        Changed?.Invoke();
    }

    /// <summary>Keeps a copy of unsaved work for the case that the program is killed; to be called every few seconds.</summary>
    public void KeepSafe()
    {
        if (!Unsaved || Asking is not null || keptSafe == Text)
            return;

        File.KeepSafe(Text);
        keptSafe = Text;
    }

    private void DoAtPlace(Word word)
    {
        switch (word)
        {
            case Word.GoSurfaces or Word.GoSequence or Word.GoSupplies or Word.GoTimeline or Word.GoAir or Word.GoSheets or Word.GoFields:
                Go((DeskPlace)(word - Word.GoSurfaces));
                break;
            case Word.Next:
                Go((DeskPlace)(((int)Place + 1) % PlaceCount));
                break;
            case Word.Previous:
                Go((DeskPlace)(((int)Place + PlaceCount - 1) % PlaceCount));
                break;
            case Word.Undo:
                Undo();
                break;
            case Word.Redo:
                Redo();
                break;
            case Word.Save:
                Save();
                break;
            case Word.Reload:
                Reload();
                break;
            case Word.Help:
                (Helping, ReadFrom) = (true, 0);
                break;
            case Word.Quit:
                Quit();
                break;
            case Word.Back when Place == DeskPlace.Fields && fields.Close():
                Message = "";
                break;
            case Word.Back:
                Message = Unsaved ? "unsaved changes: save them, or leave by quitting" : "";
                break;
            default:
                DoHere(word);
                break;
        }
    }

    private void DoHere(Word word)
    {
        switch (Place)
        {
            case DeskPlace.Surfaces:
                DoAtSurfaces(word);
                break;
            case DeskPlace.Sequence:
                DoAtSequence(word);
                break;
            case DeskPlace.Timeline:
                DoAtTimeline(word);
                break;
            case DeskPlace.Supplies:
                SupplyAt = Moved(SupplyAt, word, (Plan?.Supplies.Length + Plan?.Consumables.Length) ?? 0);
                break;
            case DeskPlace.Sheets:
                DoAtSheets(word);
                break;
            case DeskPlace.Fields:
                DoAtFields(word);
                break;
            default:
                ReadFrom = Moved(ReadFrom, word, int.MaxValue);
                break;
        }
    }

    private void DoAtSheets(Word word)
    {
        switch (word)
        {
            case Word.Left:
                (SheetAt, ReadFrom) = (Math.Max(SheetAt - 1, 0), 0);
                break;
            case Word.Right:
                (SheetAt, ReadFrom) = (Math.Clamp(SheetAt + 1, 0, Math.Max(0, Sheets.Length - 1)), 0);
                break;
            case Word.WriteSheets or Word.Enter:
                AskForFolder();
                break;
            default:
                ReadFrom = Moved(ReadFrom, word, int.MaxValue);
                break;
        }
    }

    private void AskForFolder()
    {
        if (Plan is not { } plan)
        {
            Message = "no plan to write sheets of";
            return;
        }

        Typing = new LineEdit
        {
            Asks = "Folder to write the sheets into",
            InCell = false,
            Typed = "sheets",
            Take = typed => WriteSheets(plan, typed.Trim()),
        };
    }

    private string? WriteSheets(Plan plan, string folder)
    {
        if (folder.Length == 0)
            return "a folder needs a name";

        try
        {
            var written = SheetFiles.Write(plan, folder, plan.Units == PrintUnits.Metric ? PaperSize.A4 : PaperSize.Letter);
            Message = $"written: {Written.Count(written.Length, "file", "files")} in {folder}";
            return null;
        }
        catch (BadInputException exception)
        {
            return exception.Message;
        }
    }

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
            default:
                fields.At = Moved(fields.At, word, JobFields.RowsOf(outline));
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

    private void TypeField(OutlineRow row)
    {
        var before = string.Join("; ", row.Values);
        Typing = new LineEdit
        {
            Asks = row.Kind == OutlineKind.Values ? $"{AsksFor(row)}; several with ; between them" : AsksFor(row),
            InCell = true,
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
        [.. JobOutline.At(Text, JobPath.Root.Key(map), Catalogue.Vocabulary).Rows.Select(row => row.Name)];

    private PickerRow WithMeaning(string word) =>
        new(word, PresetTables.Of(Catalogue).SelectMany(table => table.Rows).FirstOrDefault(row => row.Word == word)?.Means ?? "");

    private void AddField(Outline outline)
    {
        if (!outline.TakesKeys && outline.Item is OutlineKind.Map or OutlineKind.List)
        {
            var made = outline.Item == OutlineKind.Map ? (JobValue)new MapValue([]) : new ListValue([]);
            if (TryItem(outline, made) is { } refused)
                Message = refused;
            else
                fields.Open(outline.Path.At(outline.Rows.Length));
            return;
        }

        var example = outline.Example.Length > 0 ? $", such as {outline.Example}" : "";
        Typing = new LineEdit
        {
            Asks = outline.TakesKeys ? "Its name" : $"A value{example}",
            InCell = true,
            Typed = "",
            Take = typed => outline.TakesKeys ? AddUnder(outline, typed.Trim()) : TryItem(outline, ValueOf(outline.Item, typed)),
        };
    }

    private string? AddUnder(Outline outline, string name)
    {
        if (name.Length == 0)
            return "it needs a name";
        if (outline.Rows.Any(row => row.Name == name))
            return $"there is a {name} already";

        if (outline.Item is OutlineKind.Map or OutlineKind.List)
        {
            var made = outline.Item == OutlineKind.Map ? (JobValue)new MapValue([]) : new ListValue([]);
            var refused = TryField(outline.Path.Key(name), made);
            if (refused is null)
                fields.Open(outline.Path.Key(name));
            return refused;
        }

        var row = new OutlineRow { Path = outline.Path.Key(name), Name = name, Kind = outline.Item, Value = "", IsSet = false, Says = "", Example = outline.Example };
        TypeField(row);
        return null;
    }

    private void DeleteField(OutlineRow row)
    {
        if (!row.IsSet)
            Message = $"{row.Name} is not set";
        else
            Message = TryUnfinished(JobEdit.Remove(Text, row.Path), $"deletion of {row.Path}", typed: null) ?? $"deleted: {row.Name}; undo brings it back";
    }

    private string? TryItem(Outline outline, JobValue value) => outline.Rows.IsEmpty
        ? TryUnfinished(JobEdit.Set(Text, outline.Path, new ListValue([value])), $"new item of {outline.Path}", (value as TextValue)?.Text)
        : TryUnfinished(JobEdit.Insert(Text, outline.Path, outline.Rows.Length, value), $"new item of {outline.Path}", (value as TextValue)?.Text);

    private string? TryField(JobPath path, JobValue value) =>
        TryUnfinished(JobEdit.Set(Text, path, value), $"change of {path}", (value as TextValue)?.Text);

    // Field by field a job is unfinished for a while: what is missing is told, what was typed wrongly is refused.
    private string? TryUnfinished(JobEditing editing, string what, string? typed)
    {
        if (editing.Text is not { } text)
            return Complaint(editing.Problems);

        var reading = workshop.Read(text, File.Name, File.Path);
        var wrong = reading.Problems.Where(problem => typed is { Length: > 0 } && problem.Tried == typed && !Reading.Problems.Any(before => before.Message == problem.Message)).ToImmutableArray();
        if (!wrong.IsEmpty)
            return Complaint(wrong);
        if (typed is { Length: 0 })
            return "a value is needed; delete it to go back to its default";

        Accept(text, reading, what);
        return null;
    }

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
                SurfaceAt = Moved(SurfaceAt, word, Job?.Surfaces.Length ?? 0);
                break;
        }
    }

    private void DoAtSequence(Word word)
    {
        switch (word)
        {
            case Word.Mark when Step is { } step:
                AskWhenDone(step);
                break;
            case Word.Judge when Step is { } step:
                AskForReadings(step);
                break;
            default:
                StepAt = Moved(StepAt, word, Plan?.Steps.Length ?? 0);
                break;
        }
    }

    // Time, cans and note are asked one after the other; nothing is written before the last.
    private void AskWhenDone(PlanStep step)
    {
        if (step.Done)
        {
            Message = $"{step.Title} is ticked already; undo or the fields take it back";
            return;
        }

        Ask($"{step.Title}: when did it end? A time, or a date and a time", Clock.Time(step.End), typed =>
        {
            if (StepTicks.TimeOf(typed, step.End.Date) is not { } ended)
                return $"'{typed}' is no time; expected one such as {Clock.Time(step.End)} or 2027-05-15 14:20";

            if (step.Coat is null)
                AskForNote(step, ended, "");
            else
                Ask("Cans it used, such as 1.5 (nothing: as planned)", "", cans =>
                {
                    AskForNote(step, ended, cans);
                    return null;
                });
            return null;
        });
    }

    private void AskForNote(PlanStep step, LocalDateTime ended, string cans) =>
        Ask("A note (nothing: none)", "", note => Try(StepTicks.Tick(Text, Job!, step, ended, cans, note), $"tick of {step.Title}"));

    private void AskForReadings(PlanStep step)
    {
        if (step.Limits is not { } limits)
        {
            Message = $"{step.Title} has no limits of a label to compare with";
            return;
        }

        var units = Job?.Units ?? PrintUnits.Us;
        var example = $"{Written.Temperature(step.AirC, units)}, {Written.Temperature(step.SurfaceC, units)}, {Written.Percent(step.Humidity)}";
        Ask("Air, metal, humidity as read just now", example, typed =>
        {
            if (GoNoGo.Of(limits, typed, units) is not { } judged)
                return $"expected three readings with commas between, such as {example}";

            Judged = judged;
            return null;
        });
    }

    private void Ask(string asks, string typed, Func<string, string?> take) =>
        Typing = new LineEdit { Asks = asks, InCell = false, Typed = typed, Take = take };

    private void DoAtTimeline(Word word)
    {
        switch (word)
        {
            case Word.ZoomIn:
                Zoom = Math.Min(Zoom + 1, 3);
                break;
            case Word.ZoomOut:
                Zoom = Math.Max(Zoom - 1, 0);
                break;
            case Word.Left or Word.Right:
                StepAt = Moved(StepAt, word == Word.Left ? Word.Up : Word.Down, Plan?.Steps.Length ?? 0);
                break;
            case Word.Up or Word.Down:
                StepAt = FirstStepOfDay(word == Word.Up ? -1 : 1);
                break;
            default:
                StepAt = Moved(StepAt, word, Plan?.Steps.Length ?? 0);
                break;
        }
    }

    private int FirstStepOfDay(int direction)
    {
        if (Plan is not { } plan || Step is not { } step)
            return 0;

        var days = plan.Steps.Select(each => each.Start.Date).Distinct().Order().ToList();
        var day = days[Math.Clamp(days.IndexOf(step.Start.Date) + direction, 0, days.Count - 1)];
        return plan.Steps.IndexOf(plan.Steps.First(each => each.Start.Date == day));
    }

    private static int Moved(int at, Word word, int count)
    {
        var to = word switch
        {
            Word.Up => at - 1,
            Word.Down => at + 1,
            Word.PageUp => at - PageRows,
            Word.PageDown => at + PageRows,
            Word.First => 0,
            Word.Last when count < int.MaxValue => count - 1,
            Word.Last => at + (10 * PageRows),
            _ => at,
        };
        return Math.Clamp(to, 0, Math.Max(0, count - 1));
    }

    private void Go(DeskPlace place) => (Place, ReadFrom, Message) = (place, 0, "");

    // A row that was deleted, or a plan with fewer steps, must not leave the choice outside.
    private void KeepInside()
    {
        SurfaceAt = Math.Clamp(SurfaceAt, 0, Math.Max(0, (Job?.Surfaces.Length ?? 1) - 1));
        StepAt = Math.Clamp(StepAt, 0, Math.Max(0, (Plan?.Steps.Length ?? 1) - 1));
        if (Place == DeskPlace.Fields)
            fields.At = Math.Clamp(fields.At, 0, Math.Max(0, JobFields.RowsOf(Outline) - 1));
        SheetAt = Math.Clamp(SheetAt, 0, Math.Max(0, Sheets.Length - 1));
        SupplyAt = Math.Clamp(SupplyAt, 0, Math.Max(0, ((Plan?.Supplies.Length + Plan?.Consumables.Length) ?? 1) - 1));
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
            ? SurfaceEdits.SetArea(Text, at, typed, hasShapes: !surface.Shapes.IsEmpty)
            : SurfaceEdits.Set(Text, at, key, typed);
    }

    private void PickOne(string key, string asks, PresetTable table, string chosen)
    {
        var at = SurfaceAt;
        Picking = new Picker(asks, [.. table.Rows.Select(row => new PickerRow(row.Word, row.Means))], [chosen],
            picked => picked is [var word] ? Try(SurfaceEdits.Set(Text, at, key, word), $"change of {key}") : "nothing fits what was typed");
    }

    private void PickConditions(JobSurface surface)
    {
        var at = SurfaceAt;
        var rows = PresetTables.Conditions(Catalogue).Rows;
        Picking = new Picker("What is wrong with it; mark all that apply", [.. rows.Select(row => new PickerRow(row.Word, row.Means))], surface.Conditions,
            picked => picked.IsEmpty ? "nothing fits what was typed" : Try(SurfaceEdits.SetList(Text, at, "condition", picked), "change of condition"))
        {
            Several = true,
        };
    }

    private void PickSystem(JobSurface surface)
    {
        var at = SurfaceAt;
        Picking = new Picker("What goes on it", [.. Job!.Systems.Select(system => new PickerRow(system.Key, MeaningOf(system)))], [surface.System],
            picked => picked is [var word] ? Try(SurfaceEdits.Set(Text, at, "system", word), "change of system") : "nothing fits what was typed");
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

        var rows = PresetTables.Pieces(Catalogue).Rows.Select(row => new PickerRow(row.Word, row.Means));
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
        var refused = Try(SurfaceEdits.Insert(Text, at, piece, system, Job.Units), $"new surface {word}");
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

        OnChosen((text, at) => SurfaceEdits.Move(text, at, to), "move", to);
    }

    private void OnChosen(Func<string, int, JobEditing> edit, string what, int chosenThen)
    {
        if (Surface is not { } surface)
        {
            Message = "no surface is chosen";
            return;
        }

        if (Try(edit(Text, SurfaceAt), $"{what} of {surface.Name}") is { } refused)
            Message = refused;
        else
            SurfaceAt = chosenThen;
    }

    // A change that would make the job unreadable is refused with the first thing that is wrong with it.
    private string? Try(JobEditing editing, string what)
    {
        if (editing.Text is not { } text)
            return Complaint(editing.Problems);

        var reading = workshop.Read(text, File.Name, File.Path);
        if (reading.Ready is null)
            return Complaint(reading.Problems);

        Accept(text, reading, what);
        return null;
    }

    private void Accept(string text, IntakeResult reading, string what)
    {
        history.Add(text, what);
        Reading = reading;
        Message = "";
        Replan();
    }

    private static string Complaint(ImmutableArray<Problem> problems)
    {
        var first = problems[0];
        var expected = first.Expected.Length > 0 ? $", expected {first.Expected}" : "";
        var mend = string.IsNullOrEmpty(first.Mend) ? "" : $"; did you mean {first.Mend}?";
        return $"{first.Message}{expected}{mend}";
    }

    private void StopTyping(string message) => (Typing, Message) = (null, message);

    private void Undo()
    {
        if (history.Undoable is not { } what)
        {
            Message = "nothing to undo";
            return;
        }

        history.Undo();
        ReadAgain($"undone: {what}");
    }

    private void Redo()
    {
        if (history.Redoable is not { } what)
        {
            Message = "nothing to redo";
            return;
        }

        history.Redo();
        ReadAgain($"redone: {what}");
    }

    private void ReadAgain(string message)
    {
        Typing = null;
        Reading = workshop.Read(Text, File.Name, File.Path);
        Message = message;
        Replan();
    }

    private void Replan()
    {
        replanner.Cancel();
        if (Reading.Ready is not { } ready)
        {
            sketcher.Cancel();
            return;
        }

        // The effect of a change is shown at once; the best plan follows when it is found.
        sketcher.Want(ready, (plan, trouble) =>
        {
            Show(plan, trouble);
            if (trouble is null)
                replanner.Want(ready, Show);
        });
    }

    private void Show(Plan? plan, Exception? trouble)
    {
        Plan = plan ?? Plan;
        Trouble = trouble?.Message;
        KeepInside();
        Changed?.Invoke();
    }

    private void Save()
    {
        if (File.Path is null)
            AskForName();
        else if (File.ChangedOnDisk())
            AskWhoseTextStays();
        else
            Write();
    }

    private void AskForName() => Typing = new LineEdit
    {
        Asks = "Save as, a file name ending in .job.yaml",
        InCell = false,
        Typed = "my.job.yaml",
        Take = typed =>
        {
            if (typed.Trim().Length == 0)
                return "a file needs a name";
            if (System.IO.File.Exists(typed))
                return $"{typed} exists already; another name, please";

            File.Rename(typed.Trim());
            Typing = null;
            Write();
            return null;
        },
    };

    private void AskWhoseTextStays() => Asking = new Question(
        $"{File.Name} was changed by another program since it was read here.",
        [
            new Answer('o', "Overwrite it with what is here", Write),
            new Answer('r', "Read it again and lose what was changed here", TakeFromDisk),
        ]);

    private void Write()
    {
        try
        {
            File.Save(Text);
            Message = $"saved: {File.Path}";
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Message = $"not saved: {exception.Message.ReplaceLineEndings(" ")}";
        }
    }

    private void Reload()
    {
        if (!Unsaved)
        {
            TakeFromDisk();
            return;
        }

        Asking = new Question("Reading the file again undoes what was not saved; undo brings it back.",
            [new Answer('r', "Read the file again", TakeFromDisk)]);
    }

    private void TakeFromDisk()
    {
        try
        {
            history.Add(File.Reload(), "reading the file again");
            ReadAgain("read again");
        }
        catch (BadInputException exception)
        {
            Message = exception.Message;
        }
    }

    private void OfferWhatWasLeftBehind()
    {
        if (File.LeftBehind() is not { } left)
            return;

        Asking = new Question($"Work on {File.Name} was left unsaved the last time.",
            [
                new Answer('t', "Take it up again", () =>
                {
                    history.Add(left, "taking up unsaved work");
                    ReadAgain("taken up; not saved yet");
                }),
                new Answer('d', "Delete it", File.Forget),
            ]);
    }

    private void Quit()
    {
        if (!Unsaved)
        {
            Leave();
            return;
        }

        Asking = new Question("There are unsaved changes.",
            [
                new Answer('s', "Save and leave", () =>
                {
                    Save();
                    if (!Unsaved && Asking is null)
                        Leave();
                }),
                new Answer('d', "Discard and leave", Leave),
            ]);
    }

    private void Leave()
    {
        File.Forget();
        Left = true;
    }

    private void Answer(Word word)
    {
        var question = Asking!;
        switch (word)
        {
            case Word.Up or Word.Left or Word.Previous:
                question.At = Math.Max(question.At - 1, 0);
                break;
            case Word.Down or Word.Right or Word.Next:
                question.At = Math.Min(question.At + 1, question.Answers.Length - 1);
                break;
            case Word.Enter:
                Give(question.Answers[question.At]);
                break;
            case Word.Back:
                Asking = null;
                break;
        }
    }

    private void Give(Answer answer)
    {
        Asking = null;
        answer.Give();
    }

    private void ReadHelp(Word word)
    {
        if (word is Word.Back or Word.Help or Word.Enter)
            (Helping, ReadFrom) = (false, 0);
        else if (word is Word.Quit)
            Quit();
        else
            ReadFrom = Moved(ReadFrom, word, int.MaxValue);
    }

    private void Pick(Picker picker, Word word)
    {
        switch (word)
        {
            case Word.Back:
                Picking = null;
                break;
            case Word.Mark:
                picker.Mark();
                break;
            case Word.Enter:
                Picking = null;
                if (picker.Take(picker.Picked()) is { } refused)
                {
                    picker.Complaint = refused;
                    Picking = picker;
                }

                break;
            default:
                picker.GoTo(Moved(picker.At, word, picker.Rows.Length));
                break;
        }
    }
}
