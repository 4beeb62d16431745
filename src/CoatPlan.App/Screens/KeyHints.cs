using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>The keys that the bottom line names: those of the place, or of what lies over it.</summary>
internal static class KeyHints
{
    private static readonly KeyHint Undo = new(Keys.NameOf(Word.Undo), "undo");

    private static readonly KeyHint Save = new(Keys.NameOf(Word.Save), "save");

    private static readonly KeyHint Explain = new(Keys.NameOf(Word.Explain), "explain");

    private static readonly KeyHint Take = new(Keys.NameOf(Word.Enter), "take");

    private static readonly KeyHint ReadOn = new(Both(Word.Up, Word.Down), "read");

    private static readonly KeyHint Close = new(Keys.NameOf(Word.Back), "close");

    /// <summary>The keys that do something now, most useful first.</summary>
    /// <param name="desk">The desk.</param>
    public static ImmutableArray<KeyHint> Of(JobDesk desk) => desk switch
    {
        { Judged: not null } => [new KeyHint("any key", "goes back")],
        { Running: not null } => [new KeyHint(Keys.NameOf(Word.Back), "stop it; nothing is changed by it")],
        { Asking: not null } => [new KeyHint(Keys.NameOf(Word.Enter), "or the letter: answer"), new KeyHint(Keys.NameOf(Word.Back), "none of these")],
        { Helping: true } => [ReadOn, Close],
        { Picking: { } picker } => [.. picker.Several ? [new KeyHint(Keys.NameOf(Word.Mark), "mark")] : Array.Empty<KeyHint>(), Take, .. Leaving(desk)],
        { Typing: { } edit } => [Take, .. edit.InCell && desk is { Guiding: null, Place: DeskPlace.Surfaces } ? [new KeyHint(Keys.NameOf(Word.Next), "take, next")] : Array.Empty<KeyHint>(), new KeyHint(Keys.NameOf(Word.Empty), "empty"), .. Leaving(desk)],
        { Page: not null } => [ReadOn, new KeyHint(Keys.NameOf(Word.Explain), "explain any figure"), Close],
        { Place: DeskPlace.Sequence, Stations: > 0 } => [new KeyHint(Both(Word.Left, Word.Right), "station"), .. At(desk.Place)],
        _ => At(desk.Place),
    };

    /// <summary>The keys of a place, most useful first; they fit on the narrowest terminal that shows a whole job.</summary>
    /// <param name="place">The place.</param>
    public static ImmutableArray<KeyHint> At(DeskPlace place) => place switch
    {
        DeskPlace.Surfaces => [Of(Word.Enter), Of(Word.Inside), Of(Word.Add), Of(Word.Copy), Of(Word.Delete), Undo, Save],
        DeskPlace.Sequence => [new KeyHint(Both(Word.Up, Word.Down), "step"), Of(Word.Mark), Of(Word.Judge), new KeyHint(Keys.NameOf(Word.Enter), "more"), Explain, Undo],
        DeskPlace.Supplies => [new KeyHint(Both(Word.Up, Word.Down), "row"), Explain, Of(Word.Compare), Save],
        DeskPlace.Timeline => [new KeyHint(Both(Word.Left, Word.Right), "step"), new KeyHint(Both(Word.Up, Word.Down), "day"), new KeyHint(Both(Word.ZoomIn, Word.ZoomOut), "zoom"), Of(Word.When), Of(Word.Chance)],
        DeskPlace.Air => [ReadOn, Explain, Of(Word.Troubles), Save],
        DeskPlace.Sheets => [Of(Word.WriteSheets), new KeyHint(Both(Word.Left, Word.Right), "sheet"), ReadOn, Save],
        DeskPlace.Fields => [Of(Word.Enter), Of(Word.Add), Of(Word.Delete), Of(Word.Back), Undo, Save],
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "A place of the program."),
    };

    private static ImmutableArray<KeyHint> Leaving(JobDesk desk) => desk.Guiding is null
        ? [new KeyHint(Keys.NameOf(Word.Back), "leave as it was")]
        : [new KeyHint(Keys.NameOf(Word.Back), "the question before"), new KeyHint(Keys.NameOf(Word.Quit), "stop asking")];

    private static KeyHint Of(Word word) => new(Keys.NameOf(word), Keys.All.First(row => row.Word == word).Brief);

    private static string Both(Word one, Word other) => $"{Keys.NameOf(one)}/{Keys.NameOf(other)}";
}
