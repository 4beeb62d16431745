namespace CoatPlan.App.Desk;

/// <summary>Every state that a text went through, to go back and forth in without limit.</summary>
internal sealed class History
{
    private readonly Stack<Entry> before = new();

    private readonly Stack<Entry> after = new();

    private Entry now;

    /// <summary>A history that begins with a text.</summary>
    /// <param name="text">The text.</param>
    public History(string text) => now = new Entry(text, "");

    /// <summary>The text as it is now.</summary>
    public string Text => now.Text;

    /// <summary>What undo would take back; null where there is nothing.</summary>
    public string? Undoable => before.Count > 0 ? now.What : null;

    /// <summary>The text before the last change; null where there is none.</summary>
    public string? Before => before.TryPeek(out var earlier) ? earlier.Text : null;

    /// <summary>What redo would make again; null where there is nothing.</summary>
    public string? Redoable => after.TryPeek(out var next) ? next.What : null;

    /// <summary>Goes on to a new text; what was taken back before is forgotten. The same text is no change.</summary>
    /// <param name="text">The new text.</param>
    /// <param name="what">What was done, in words.</param>
    public void Add(string text, string what)
    {
        if (text == now.Text)
            return;

        before.Push(now);
        after.Clear();
        now = new Entry(text, what);
    }

    /// <summary>Goes back by one change; does nothing at the beginning.</summary>
    public void Undo()
    {
        if (!before.TryPop(out var earlier))
            return;

        after.Push(now);
        now = earlier;
    }

    /// <summary>Goes forth by one change; does nothing at the end.</summary>
    public void Redo()
    {
        if (!after.TryPop(out var later))
            return;

        before.Push(now);
        now = later;
    }

    private sealed record Entry(string Text, string What);
}
