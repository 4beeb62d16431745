using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Screens;

/// <summary>Writes sentences one under the other, wrapped, until the canvas is full.</summary>
/// <param name="canvas">The canvas.</param>
/// <param name="y">The first row.</param>
/// <param name="x">The first column.</param>
/// <param name="width">Columns; null for all to the right edge.</param>
internal sealed class Reader(Canvas canvas, int y, int x = 0, int? width = null)
{
    private readonly int columns = Math.Max(1, width ?? (canvas.Width - x));

    /// <summary>The next row.</summary>
    public int Y { get; private set; } = y;

    /// <summary>Writes a sentence.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="ink">Its ink.</param>
    public void Say(string text, Ink ink = Ink.Plain)
    {
        foreach (var line in Wrapping.Lines(text, columns))
            canvas.Write(x, Y++, line, ink);
    }

    /// <summary>Writes a sentence with a lead that hangs out.</summary>
    /// <param name="lead">The lead.</param>
    /// <param name="text">The sentence.</param>
    /// <param name="ink">Its ink.</param>
    public void Item(string lead, string text, Ink ink = Ink.Plain)
    {
        foreach (var line in Wrapping.Hanging(lead, text, Math.Max(columns, lead.Length + 1)))
            canvas.Write(x, Y++, line, ink);
    }

    /// <summary>Leaves a row free.</summary>
    public void Skip() => Y++;
}
