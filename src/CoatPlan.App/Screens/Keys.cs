using CoatPlan.App.Desk;
using Terminal.Gui.Input;

namespace CoatPlan.App.Screens;

/// <summary>Every key of the terminal UI, declared once: they feed the keys themselves, the bottom line, the menu, the help and the reference.</summary>
internal static class Keys
{
    private const string Places = "Places";

    private const string Moving = "Moving about";

    private const string Changing = "Changing the job";

    private const string Asking = "Asking of the plan";

    private const string Program = "File and program";

    private static readonly ImmutableArray<DeskPlace> Everywhere = [.. Enum.GetValues<DeskPlace>()];

    private static readonly ImmutableArray<DeskPlace> AtSurfaces = [DeskPlace.Surfaces];

    private static readonly ImmutableArray<DeskPlace> AtRows = [DeskPlace.Surfaces, DeskPlace.Fields];

    private static readonly ImmutableArray<DeskPlace> AtSequence = [DeskPlace.Sequence];

    private static readonly ImmutableArray<DeskPlace> AtTimeline = [DeskPlace.Timeline];

    /// <summary>The keys, in the order in which help lists them.</summary>
    public static ImmutableArray<KeyRow> All { get; } =
    [
        new(Word.GoSurfaces, Places, "surfaces", "What is to be refinished, in a table that can be changed", Everywhere, new KeyName(Key.D1, "1")),
        new(Word.GoSequence, Places, "sequence", "The steps in their order, with the reason for the chosen one", Everywhere, new KeyName(Key.D2, "2")),
        new(Word.GoSupplies, Places, "supplies", "Cans and the rest, with what each number covers", Everywhere, new KeyName(Key.D3, "3")),
        new(Word.GoTimeline, Places, "timeline", "The days by the hour: work, drying, windows", Everywhere, new KeyName(Key.D4, "4")),
        new(Word.GoAir, Places, "air", "The air, the respirator, the cautions", Everywhere, new KeyName(Key.D5, "5")),
        new(Word.GoSheets, Places, "sheets", "What can be put on paper", Everywhere, new KeyName(Key.D6, "6")),
        new(Word.GoFields, Places, "fields", "Every field of the job: place, hours, products, systems, prices", Everywhere, new KeyName(Key.D7, "7")),
        new(Word.Next, Places, "next place", "The next place; while a value is typed: take it and go to the next one", Everywhere, new KeyName(Key.Tab, "Tab")),
        new(Word.Previous, Places, "place before", "The place before", Everywhere, new KeyName(Key.Tab.WithShift, "Shift+Tab")),

        new(Word.Up, Moving, "row up", "One row up; on the timeline the day before", Everywhere, new KeyName(Key.CursorUp, "Up")),
        new(Word.Down, Moving, "row down", "One row down; on the timeline the day after", Everywhere, new KeyName(Key.CursorDown, "Down")),
        new(Word.Left, Moving, "to the left", "One column to the left; on the timeline the step before; the sheet before; in a class's sequence the station before", [DeskPlace.Surfaces, DeskPlace.Sequence, DeskPlace.Timeline, DeskPlace.Sheets, DeskPlace.Fields], new KeyName(Key.CursorLeft, "Left")),
        new(Word.Right, Moving, "to the right", "One column to the right; on the timeline the step after; the next sheet; in a class's sequence the next station", [DeskPlace.Surfaces, DeskPlace.Sequence, DeskPlace.Timeline, DeskPlace.Sheets, DeskPlace.Fields], new KeyName(Key.CursorRight, "Right")),
        new(Word.PageUp, Moving, "page up", "Ten rows up", Everywhere, new KeyName(Key.PageUp, "PgUp")),
        new(Word.PageDown, Moving, "page down", "Ten rows down", Everywhere, new KeyName(Key.PageDown, "PgDn")),
        new(Word.First, Moving, "first", "To the first row", Everywhere, new KeyName(Key.Home, "Home")),
        new(Word.Last, Moving, "last", "To the last row", Everywhere, new KeyName(Key.End, "End")),
        new(Word.ZoomIn, Moving, "closer", "Fewer hours, each of them wider", AtTimeline, new KeyName(new Key('+'), "+")),
        new(Word.ZoomOut, Moving, "farther", "More hours, each of them narrower", AtTimeline, new KeyName(new Key('-'), "-")),

        new(Word.Enter, Changing, "change", "Change the chosen value, open what is in it; everything about a step; take what was typed or picked", [.. AtRows, DeskPlace.Sequence, DeskPlace.Timeline], new KeyName(Key.Enter, "Enter"), new KeyName(Key.F2, "F2")),
        new(Word.Add, Changing, "add", "Add a surface after the chosen one; add a field or an item", AtRows, new KeyName(new Key('a'), "a"), new KeyName(Key.InsertChar, "Ins")),
        new(Word.Copy, Changing, "copy", "Copy the chosen surface, or item of a list", AtRows, new KeyName(new Key('c'), "c")),
        new(Word.Delete, Changing, "delete", "Delete the chosen surface or field; undo brings it back", AtRows, new KeyName(Key.Delete, "Del")),
        new(Word.MoveUp, Changing, "move up", "Move the chosen surface or item up", AtRows, new KeyName(Key.CursorUp.WithAlt, "Alt+Up"), new KeyName(new Key('<'), "<")),
        new(Word.MoveDown, Changing, "move down", "Move the chosen surface or item down", AtRows, new KeyName(Key.CursorDown.WithAlt, "Alt+Down"), new KeyName(new Key('>'), ">")),
        new(Word.Inside, Changing, "all of it", "Everything about the chosen surface: shapes, masks, gauge, heat, what is near it", AtSurfaces, new KeyName(new Key('i'), "i"), new KeyName(Key.F3, "F3")),
        new(Word.Judge, Changing, "go or no-go", "Compare air, metal and humidity as read just now with the limits of the chosen coat", AtSequence, new KeyName(new Key('g'), "g")),
        new(Word.Mark, Changing, "tick", "In the sequence: tick the chosen step off as done; in a list: mark or unmark", AtSequence, new KeyName(Key.Space, "Space")),
        new(Word.Empty, Changing, "empty", "While a value is typed: empty it; in a list: show all of it again", [], new KeyName(Key.U.WithCtrl, "Ctrl+U")),
        new(Word.Undo, Changing, "undo", "Take back the last change, as often as there are any", Everywhere, new KeyName(Key.Z.WithCtrl, "Ctrl+Z")),
        new(Word.Redo, Changing, "redo", "Make a change again that was taken back", Everywhere, new KeyName(Key.Y.WithCtrl, "Ctrl+Y")),

        new(Word.Explain, Asking, "explain", "How the chosen figure came about: sum, inputs, sources; once more: any figure", Everywhere, new KeyName(new Key('e'), "e"), new KeyName(Key.F4, "F4")),
        new(Word.When, Asking, "start times", "Which starts the weather and the hours allow, best first; picking one takes it", Everywhere, new KeyName(new Key('s'), "s"), new KeyName(Key.F6, "F6")),
        new(Word.Chance, Asking, "chance", "How likely the job is done in time, what costs the most, what would help", Everywhere, new KeyName(new Key('o'), "o"), new KeyName(Key.F7, "F7")),
        new(Word.Compare, Asking, "compare", "This plan beside that of the saved file, of before the last change, or of another file", Everywhere, new KeyName(new Key('d'), "d"), new KeyName(Key.F8, "F8")),
        new(Word.Troubles, Asking, "warnings", "What is wrong with the plan: why it is not as asked, the ways out that were tried, its warnings", Everywhere, new KeyName(new Key('r'), "r"), new KeyName(Key.F9, "F9")),

        new(Word.Save, Program, "save", "Write the job file; nothing in it changes but what was changed here", Everywhere, new KeyName(Key.S.WithCtrl, "Ctrl+S")),
        new(Word.Reload, Program, "read again", "Read the job file again, after another program changed it", Everywhere, new KeyName(Key.F5, "F5")),
        new(Word.WriteSheets, Program, "write sheets", "Write the sheets into a folder", [DeskPlace.Sheets], new KeyName(new Key('w'), "w")),
        new(Word.Help, Program, "help", "This list", Everywhere, new KeyName(Key.F1, "F1"), new KeyName(new Key('?'), "?")),
        new(Word.Menu, Program, "menu", "Everything that can be done here, to choose from", Everywhere, new KeyName(Key.F10, "F10"), new KeyName(new Key('m'), "m")),
        new(Word.Back, Program, "back", "Leave what is open without taking it", Everywhere, new KeyName(Key.Esc, "Esc")),
        new(Word.Quit, Program, "quit", "Leave the program; asks where changes are not saved", Everywhere, new KeyName(Key.Q.WithCtrl, "Ctrl+Q")),
    ];

    /// <summary>What a key asks for; null where it asks for nothing.</summary>
    /// <param name="key">The key.</param>
    public static Word? WordOf(Key key) => All.FirstOrDefault(row => row.Pressed.Any(name => name.Key == key))?.Word;

    /// <summary>What the menu offers at a place: everything but moving about, and the places last, as their names can be seen anyway.</summary>
    /// <param name="place">The place.</param>
    public static ImmutableArray<KeyRow> MenuAt(DeskPlace place) =>
        [.. All.Where(row => row.Group != Moving && row.Places.Contains(place) && row.Word is not (Word.Menu or Word.Back)).OrderBy(row => row.Group == Places)];

    /// <summary>Whether a key takes what is typed; the other keys of its word belong to the text field.</summary>
    /// <param name="key">The key.</param>
    public static bool Takes(Key key) => key == Key.Enter;

    /// <summary>Whether a key erases what was typed to narrow a list.</summary>
    /// <param name="key">The key.</param>
    public static bool Erases(Key key) => key == Key.Backspace;

    /// <summary>What a key types; empty where it types nothing.</summary>
    /// <param name="key">The key.</param>
    public static string Typed(Key key) =>
        !key.IsCtrl && !key.IsAlt && key != Key.Space && key.TryGetPrintableRune(out var rune) ? rune.ToString() : "";

    /// <summary>What a person calls the first key of a word.</summary>
    /// <param name="word">The word.</param>
    public static string NameOf(Word word) => All.First(row => row.Word == word).Pressed[0].Name;
}
