using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Presets;
using CoatPlan.Sheets.Content;

namespace CoatPlan.App.Desk;

/// <summary>The open job with its history, its newest plan, what is chosen and what is asked: everything the terminal UI decides, without a terminal.</summary>
internal sealed partial class JobDesk
{
    private const int LongestRead = 10_000;

    private static readonly int PlaceCount = Enum.GetValues<DeskPlace>().Length;

    private readonly Workshop workshop;

    private readonly Action<Action> background;

    private readonly Action<Action> foreground;

    private readonly EditedJob edited;

    private readonly LivePlan live;

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
        edited = new EditedJob(workshop, file);
        live = new LivePlan(workshop, background, foreground, Shown);
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
    public string Text => edited.Text;

    /// <summary>What was read from the text.</summary>
    public IntakeResult Reading => edited.Reading;

    /// <summary>The job; null where its text holds mistakes.</summary>
    public Job? Job => Reading.Ready?.Job;

    /// <summary>The newest plan; that of an earlier text while <see cref="Planning"/>, null where there never was one.</summary>
    public Plan? Plan => live.Plan;

    /// <summary>Whether a plan of the newest text is being made.</summary>
    public bool Planning => live.Planning;

    /// <summary>Whether the newest plan is still being made better.</summary>
    public bool Improving => live.Improving;

    /// <summary>Why the newest text could not be planned, where that is an error of the program; null otherwise.</summary>
    public string? Trouble => live.Trouble;

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

    /// <summary>The last row that can be the first one shown; what draws the place knows how much of it fits.</summary>
    public int ReadEnd { get; set; } = LongestRead;

    /// <summary>The sheets of the newest plan; empty where there is none.</summary>
    public ImmutableArray<Sheet> Sheets => live.Sheets;

    /// <summary>The sheet that is shown, from 0.</summary>
    public int SheetAt { get; private set; }

    /// <summary>The map or list of the job's fields that is open.</summary>
    public Outline Outline => edited.At(fields.Path);

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
    public string? Undoable => edited.Undoable;

    /// <summary>The chosen surface; null where there is none.</summary>
    public JobSurface? Surface => Job is { } job && SurfaceAt < job.Surfaces.Length ? job.Surfaces[SurfaceAt] : null;

    /// <summary>The chosen surface as planned; null where there is none.</summary>
    public PlanSurface? Planned => Surface is { } surface ? Plan?.Surfaces.FirstOrDefault(planned => planned.Id == surface.Id) : null;

    /// <summary>The chosen step; null where there is none.</summary>
    public PlanStep? Step => Plan is { } plan && StepAt < plan.Steps.Length ? plan.Steps[StepAt] : null;

    private int SupplyRows => (Plan?.Supplies.Length + Plan?.Consumables.Length) ?? 0;

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
        else if (word is Word.Help)
            (Helping, ReadFrom) = (true, 0);
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

    // What was said about the key before is over with the next one.
    private void DoAtPlace(Word word)
    {
        Message = "";
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
            case Word.Quit:
                Quit();
                break;
            case Word.Troubles:
                ReadTroubles();
                break;
            case Word.Back when Place == DeskPlace.Fields && fields.Close():
                break;
            case Word.Back when Unsaved:
                Message = "unsaved changes: save them, or leave by quitting";
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
                SupplyAt = RowChoice.Moved(SupplyAt, word, SupplyRows);
                break;
            case DeskPlace.Sheets:
                DoAtSheets(word);
                break;
            case DeskPlace.Fields:
                DoAtFields(word);
                break;
            default:
                ReadOn(word);
                break;
        }
    }

    private void ReadOn(Word word) => ReadFrom = RowChoice.Moved(Math.Min(ReadFrom, ReadEnd), word, ReadEnd + 1);

    private void Go(DeskPlace place) => (Place, ReadFrom) = (place, 0);

    // A row that was deleted, or a plan with fewer steps, must not leave the choice outside.
    private void KeepInside()
    {
        SurfaceAt = RowChoice.Inside(SurfaceAt, Job?.Surfaces.Length ?? 0);
        StepAt = RowChoice.Inside(StepAt, Plan?.Steps.Length ?? 0);
        KeepStationInside();
        if (Place == DeskPlace.Fields)
            fields.At = RowChoice.Inside(fields.At, JobFields.RowsOf(Outline));
        if (Place == DeskPlace.Sheets)
            SheetAt = RowChoice.Inside(SheetAt, Sheets.Length);
        SupplyAt = RowChoice.Inside(SupplyAt, SupplyRows);
    }

    private string? Try(JobEditing editing, string what) => Accepted(edited.Change(editing, what));

    private string? TryUnfinished(JobEditing editing, string what, string? typed) => Accepted(edited.ChangeField(editing, what, typed));

    private string? Accepted(string? refused)
    {
        if (refused is null)
        {
            Message = "";
            Replan();
        }

        return refused;
    }

    private void TakeUp(string text, string what, string message)
    {
        edited.Put(text, what);
        ShowText(message);
    }

    private void Undo()
    {
        if (edited.Undo() is { } what)
            ShowText($"undone: {what}");
        else
            Message = "nothing to undo";
    }

    private void Redo()
    {
        if (edited.Redo() is { } what)
            ShowText($"redone: {what}");
        else
            Message = "nothing to redo";
    }

    private void ShowText(string message)
    {
        (Typing, Message) = (null, message);
        Replan();
    }

    private void Replan() => live.Want(Reading.Ready);

    // Steps move when the plan changes; the choice stays with the step, not with its row.
    private void Shown(Plan? before)
    {
        ChooseStep(before is not null && StepAt < before.Steps.Length ? before.Steps[StepAt].Id : null);
        KeepInside();
        Changed?.Invoke();
    }

    private void ChooseStep(string? id)
    {
        if (id is not null && Plan is { } plan && plan.Steps.FirstOrDefault(step => step.Id == id) is { } step)
            StepAt = plan.Steps.IndexOf(step);
    }
}
