using System.Drawing;
using CoatPlan.App.Desk;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace CoatPlan.App.Screens;

/// <summary>The one window: draws the desk, turns keys and clicks into words for it, and lends it a text field for typing.</summary>
internal sealed class Workbench : Runnable
{
    // A cell may be narrower than what is typed into it; the field reaches over its neighbours.
    private const int RoomToType = 24;

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

    // Every row is drawn whole, and what stands there already need not be sent again.
    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        var canvas = Picture();
        for (var y = 0; y < canvas.Height; y++)
        {
            foreach (var (from, end) in canvas.Parts(y, Standing(canvas, y)))
            {
                foreach (var (x, text, ink) in canvas.Runs(y, from, end))
                {
                    Move(x, y);
                    SetAttribute(palette.Of(ink));
                    AddStr(text);
                }
            }
        }

        return true;
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        if (IsTyping)
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

        if (desk is { Picking: not null, Helping: false } && KeyWhilePicking(key))
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
        else if (mouse.IsDoubleClicked)
            Clicks.Twice(desk, Viewport.Width, Viewport.Height, at.X, at.Y);
        else if (mouse.IsSingleClicked)
            Clicks.Once(desk, Viewport.Width, Viewport.Height, at.X, at.Y);
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

    // From a column to whether the screen shows there what the canvas has.
    private Func<int, bool> Standing(Canvas canvas, int y)
    {
        var (left, top) = (ViewportToScreen(Point.Empty).X, ViewportToScreen(Point.Empty).Y + y);
        if (App?.Driver?.Contents is not { } screen || top >= screen.GetLength(0) || left + canvas.Width > screen.GetLength(1))
            return static _ => false;

        return x =>
        {
            ref readonly var cell = ref screen[top, left + x];
            return cell.Grapheme == canvas.TextAt(x, y) && cell.Attribute == palette.Of(canvas.InkAt(x, y));
        };
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
            case Word.Empty:
                field.Text = "";
                return true;
            case Word.Help when Keys.Typed(key).Length == 0:
                KeepTyped();
                desk.Do(Word.Help);
                return true;
            default:
                return true;
        }
    }

    // What was typed so far is there again when help is closed.
    private void KeepTyped()
    {
        if (desk.Typing is { } edit)
            edit.Typed = field.Text;
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

    // Help lies over what is typed, which waits for it to be closed.
    private bool IsTyping => desk is { Typing: not null, Helping: false };

    private Canvas Picture()
    {
        var canvas = new Canvas(Viewport.Width, Viewport.Height);
        if (canvas.Width < FrameScreen.LeastWidth || canvas.Height < FrameScreen.LeastHeight)
        {
            new Reader(canvas, 0).Say($"CoatPlan needs {FrameScreen.LeastWidth} columns and {FrameScreen.LeastHeight} rows; this terminal has {canvas.Width} and {canvas.Height}.");
            return canvas;
        }

        FrameScreen.Draw(canvas, desk);
        var place = new Canvas(canvas.Width, FrameScreen.PlaceRows(canvas.Width, canvas.Height, desk));
        PlaceScreen.Draw(place, desk);
        canvas.Paste(0, FrameScreen.RowsAbove, place);
        SaidScreen.Draw(canvas, desk);
        return canvas;
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
        if (!IsTyping || desk.Typing is not { } edit)
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

        if (!edit.InCell)
            Put(SaidScreen.Field(Viewport.Width, Viewport.Height));
        else if (PlaceScreen.Draw(new Canvas(Viewport.Width, FrameScreen.PlaceRows(Viewport.Width, Viewport.Height, desk)), desk) is { } cell)
            Put(new Cell(cell.X, cell.Y + FrameScreen.RowsAbove, Math.Min(Math.Max(cell.Width, RoomToType), Viewport.Width - cell.X)));
    }

    private void Put(Cell cell) => (field.X, field.Y, field.Width) = (cell.X, cell.Y, Math.Max(1, cell.Width));
}
