using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Presets;
using CoatPlan.Problems;
using CoatPlan.Sheets.Content;

namespace CoatPlan.App.Desk;

/// <summary>The open job with its history, its newest plan, what is chosen and what is asked: everything the terminal UI decides, without a terminal.</summary>
internal sealed partial class JobDesk
{
    private const int PageRows = 10;

    private static readonly int PlaceCount = Enum.GetValues<DeskPlace>().Length;

    private readonly Workshop workshop;

    private readonly Action<Action> background;

    private readonly Action<Action> foreground;

    private PlannedJob? planned;

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
        this.background = background;
        this.foreground = foreground;
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
    public Plan? Plan => planned?.Plan;

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
        else if (Running is not null)
            WhileRunning(word);
        else if (Asking is not null)
            Answer(word);
        else if (Helping)
            ReadHelp(word);
        else if (Picking is { } picker)
            Pick(picker, word);
        else if (Page is not null && Typing is null)
            ReadPage(word);
        else if (Typing is not null && word is Word.Back)
            StopTyping("nothing changed");
        else if (Guiding is not null)
            WhileGuiding(word);
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

    /// <summary>Chooses a row of the supplies, as with a mouse.</summary>
    /// <param name="row">The row, cans first, from 0.</param>
    public void ChooseSupply(int row)
    {
        SupplyAt = row;
        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Chooses a field, as with a mouse.</summary>
    /// <param name="row">Its row, from 0.</param>
    public void ChooseField(int row)
    {
        fields.At = row;
        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Chooses a sheet, as with a mouse.</summary>
    /// <param name="sheet">The sheet, from 0.</param>
    public void ChooseSheet(int sheet)
    {
        (SheetAt, ReadFrom) = (sheet, 0);
        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Chooses a row of the list that is being picked from, as with a mouse.</summary>
    /// <param name="row">The row, from 0.</param>
    public void PointAt(int row)
    {
        Picking?.GoTo(row);
        Changed?.Invoke();
    }

    /// <summary>Opens a list to pick from.</summary>
    /// <param name="picker">The list.</param>
    public void Offer(Picker picker)
    {
        Picking = picker;
        Changed?.Invoke();
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
            case Word.When:
                LookForStarts();
                break;
            case Word.Chance:
                LookForChance();
                break;
            case Word.Compare:
                AskWhatToCompare();
                break;
            case Word.Explain:
                Explain();
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

    private void StopTyping(string message)
    {
        (Typing, Message) = (null, message);
        if (Guiding is not null)
            GoBackInGuide();
    }

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

    private void Show(PlannedJob? made, Exception? trouble)
    {
        planned = made ?? planned;
        Trouble = trouble?.Message;
        KeepInside();
        Changed?.Invoke();
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
                GoOnGuiding();
                break;
        }
    }

    private void Give(Answer answer)
    {
        Asking = null;
        answer.Give();
        GoOnGuiding();
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
                if (Guiding is not null)
                    GoBackInGuide();
                break;
            case Word.Quit:
                Picking = null;
                Quit();
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
