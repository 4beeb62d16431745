using CoatPlan.App.Desk;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace CoatPlan.App.Screens;

/// <summary>The one window: draws the desk, turns keys and clicks into words for it, and lends it a text field for typing.</summary>
internal sealed class Workbench : Runnable
{
    private readonly JobDesk desk;

    private readonly Palette palette;

    private readonly TextField field;

    private LineEdit? shown;

    /// <summary>A window on a desk.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="palette">How it looks.</param>
    public Workbench(JobDesk desk, Palette palette)
    {
        this.desk = desk;
        this.palette = palette;
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;
        field = new TextField { Visible = false, Width = 10 };
        SetScheme(palette.Scheme);
        field.SetScheme(palette.Scheme);
        Add(field);
        desk.Changed += Refresh;
    }

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        var canvas = Picture();
        for (var y = 0; y < canvas.Height; y++)
        {
            for (var x = 0; x < canvas.Width; x++)
            {
                var text = canvas.TextAt(x, y);
                if (text.Length == 0)
                    continue;
                Move(x, y);
                SetAttribute(palette.Of(canvas.InkAt(x, y)));
                AddStr(text);
            }
        }

        return true;
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        if (desk.Typing is not null)
            return KeyWhileTyping(key);

        if (desk.Judged is not null)
        {
            desk.Do(Word.Back);
            return true;
        }

        if (desk.Asking is not null && Keys.Typed(key) is [var letter])
        {
            desk.Answer(letter);
            return true;
        }

        if (desk.Picking is not null && KeyWhilePicking(key))
            return true;

        if (Keys.WordOf(key) is { } word)
        {
            if (word == Word.Menu && desk is { Asking: null, Picking: null, Helping: false })
                desk.Offer(Menu());
            else
                desk.Do(word);
        }

        // Nothing goes on to the toolkit: its own keys would leave the program without asking.
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (desk.Typing is not null || mouse.Position is not { } at)
            return false;

        if (mouse.Flags.HasFlag(MouseFlags.WheeledDown))
            desk.Do(Word.Down);
        else if (mouse.Flags.HasFlag(MouseFlags.WheeledUp))
            desk.Do(Word.Up);
        else if (mouse.IsSingleClicked || mouse.IsDoubleClicked)
            Click(at.X, at.Y - FrameScreen.RowsAbove, mouse.IsDoubleClicked);
        else
            return false;
        return true;
    }

    /// <inheritdoc/>
    protected override void OnSubViewLayout(LayoutEventArgs args)
    {
        base.OnSubViewLayout(args);
        PlaceField();
    }

    // What lies over a place is clicked before the place; a second click at once does what Enter does.
    private void Click(int x, int y, bool twice)
    {
        if (desk.Asking is { } question)
        {
            if (QuestionScreen.At(Viewport.Width, y, question) is { } answer)
                desk.Answer(answer.Letter);
        }
        else if (desk.Picking is { } picker)
        {
            if (PickerScreen.At(PlaceHeight(), y, picker) is { } row)
                ClickPicker(picker, row, twice);
        }
        else if (desk is { Helping: false, Judged: null, Running: null, Page: null })
        {
            ClickPlace(x, y, twice);
        }
    }

    private void ClickPicker(Picker picker, int row, bool twice)
    {
        desk.PointAt(row);
        if (picker.Several && !twice)
            desk.Do(Word.Mark);
        else if (twice && !picker.Several)
            desk.Do(Word.Enter);
    }

    private void ClickPlace(int x, int y, bool twice)
    {
        if (y == -1)
        {
            if (FrameScreen.PlaceAt(x) is { } place)
                desk.Do(Word.GoSurfaces + (int)place);
            return;
        }

        if (ChooseAt(x, y) && twice)
            desk.Do(Word.Enter);
    }

    private bool ChooseAt(int x, int y)
    {
        var (width, height) = (Viewport.Width, PlaceHeight());
        switch (desk.Place)
        {
            case DeskPlace.Surfaces when SurfacesScreen.At(width, height, x, y, desk) is var (surface, column):
                desk.Choose(surface, column);
                return true;
            case DeskPlace.Sequence when SequenceScreen.At(width, height, y, desk) is { } step:
                desk.ChooseStep(step);
                return true;
            case DeskPlace.Supplies when SuppliesScreen.At(height, y, desk) is { } supply:
                desk.ChooseSupply(supply);
                return true;
            case DeskPlace.Fields when FieldsScreen.At(height, y, desk) is { } field:
                desk.ChooseField(field);
                return true;
            case DeskPlace.Sheets when y == 0 && SheetsScreen.At(x, desk) is { } sheet:
                desk.ChooseSheet(sheet);
                return false;
            default:
                return false;
        }
    }

    private bool KeyWhileTyping(Key key)
    {
        switch (Keys.WordOf(key))
        {
            case Word.Enter when Keys.Takes(key):
                desk.Take(field.Text);
                return true;
            case Word.Next:
                if (desk.Take(field.Text))
                    desk.Do(Word.Right);
                return true;
            case Word.Save when desk.Typing!.InCell:
                if (desk.Take(field.Text))
                    desk.Do(Word.Save);
                return true;
            case Word.Quit:
                desk.Do(Word.Back);
                desk.Do(Word.Quit);
                return true;
            case Word.Back:
                desk.Do(Word.Back);
                return true;
            default:
                return true;
        }
    }

    private bool KeyWhilePicking(Key key)
    {
        if (Keys.Erases(key))
        {
            desk.Widen();
            return true;
        }

        if (Keys.WordOf(key) == Word.Mark && !desk.Picking!.Several)
        {
            desk.Narrow(" ");
            return true;
        }

        if (Keys.Typed(key) is not { Length: > 0 } text)
            return false;

        desk.Narrow(text);
        return true;
    }

    private Picker Menu()
    {
        var rows = Keys.MenuAt(desk.Place).Select(row => new PickerRow(NameOf(row), row.Means)).ToImmutableArray();
        return new Picker("What can be done here", rows, [], picked =>
        {
            if (picked is not [var word])
                return "nothing fits what was typed";

            // Later: what is chosen may open a list itself, and this one is still open.
            var chosen = Keys.All.First(row => NameOf(row) == word).Word;
            App?.Invoke(() => desk.Do(chosen));
            return null;
        });

        static string NameOf(KeyRow row) => $"{row.Brief} ({row.Pressed[0].Name})";
    }

    private int PlaceHeight() => Math.Max(0, Viewport.Height - FrameScreen.RowsAbove - FrameScreen.RowsBelow);

    private Canvas Picture()
    {
        var canvas = new Canvas(Viewport.Width, Viewport.Height);
        if (canvas.Width < FrameScreen.LeastWidth || canvas.Height < FrameScreen.LeastHeight)
        {
            new Reader(canvas, 0).Say($"CoatPlan needs {FrameScreen.LeastWidth} columns and {FrameScreen.LeastHeight} rows; this terminal has {canvas.Width} and {canvas.Height}.");
            return canvas;
        }

        FrameScreen.Draw(canvas, desk);
        var place = new Canvas(canvas.Width, PlaceHeight());
        DrawPlace(place);
        canvas.Paste(0, FrameScreen.RowsAbove, place);
        return canvas;
    }

    private Cell? DrawPlace(Canvas canvas)
    {
        if (desk.Judged is { } judged)
            JudgementScreen.Draw(canvas, judged);
        else if (desk.Running is { } running)
            RunningScreen.Draw(canvas, running);
        else if (desk.Asking is { } question)
            QuestionScreen.Draw(canvas, question);
        else if (desk.Helping)
            HelpScreen.Draw(canvas, desk);
        else if (desk.Picking is { } picker)
            PickerScreen.Draw(canvas, picker);
        else if (desk.GuideAsks is { } asks)
            return GuideScreen.Draw(canvas, desk, asks);
        else if (desk.Page is { } page)
            PageScreen.Draw(canvas, page, desk.ReadFrom);
        else if (desk.Place == DeskPlace.Fields)
            return FieldsScreen.Draw(canvas, desk);
        else if (desk.Job is null)
            ProblemsScreen.Draw(canvas, desk);
        else
            return DrawOpenPlace(canvas);
        return null;
    }

    private Cell? DrawOpenPlace(Canvas canvas)
    {
        switch (desk.Place)
        {
            case DeskPlace.Surfaces:
                return SurfacesScreen.Draw(canvas, desk);
            case DeskPlace.Sequence:
                SequenceScreen.Draw(canvas, desk);
                break;
            case DeskPlace.Supplies:
                SuppliesScreen.Draw(canvas, desk);
                break;
            case DeskPlace.Timeline:
                TimelineScreen.Draw(canvas, desk);
                break;
            case DeskPlace.Air:
                AirScreen.Draw(canvas, desk);
                break;
            case DeskPlace.Sheets:
                SheetsScreen.Draw(canvas, desk);
                break;
        }

        return null;
    }

    private void Refresh()
    {
        if (desk.Left)
        {
            App?.RequestStop(this);
            return;
        }

        ShowField();
        SetNeedsLayout();
        SetNeedsDraw();
    }

    private void ShowField()
    {
        if (desk.Typing is not { } edit)
        {
            shown = null;
            field.Visible = false;
            if (!HasFocus || field.HasFocus)
                SetFocus();
            return;
        }

        if (shown == edit)
            return;

        shown = edit;
        field.Text = edit.Typed;
        field.Visible = true;
        PlaceField();
        field.SetFocus();
        field.MoveEnd();
    }

    private void PlaceField()
    {
        if (desk.Typing is not { } edit)
            return;

        if (edit.InCell && DrawPlace(new Canvas(Viewport.Width, PlaceHeight())) is { } cell)
        {
            // A cell may be narrower than what is typed into it; the field reaches over its neighbours.
            const int roomToType = 24;
            var width = Math.Min(Math.Max(cell.Width, roomToType), Viewport.Width - cell.X);
            (field.X, field.Y, field.Width) = (cell.X, cell.Y + FrameScreen.RowsAbove, width);
        }
        else
        {
            var from = Math.Min(edit.Asks.Length + 2, Viewport.Width / 2);
            (field.X, field.Y, field.Width) = (from, Math.Max(0, Viewport.Height - FrameScreen.RowsBelow), Math.Max(1, Viewport.Width - from));
        }
    }
}
