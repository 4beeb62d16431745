using System.Globalization;
using System.Text;
using Terminal.Gui.Text;

namespace CoatPlan.App.Screens;

/// <summary>A grid of characters that a screen draws on; what does not fit is cut.</summary>
internal sealed class Canvas
{
    private const char Ellipsis = '…';

    private const string Blank = " ";

    private const int ShortestStretch = 6;

    // Every plain character as a text of its own, so that writing makes none.
    private static readonly ImmutableArray<string> PlainTexts = [.. Enumerable.Range(0, '~' + 1).Select(code => ((char)code).ToString())];

    // A row is made when something is written into it: a long page is mostly rows that stay empty.
    private readonly string[]?[] cells;

    private readonly Ink[]?[] inks;

    /// <summary>An empty canvas.</summary>
    /// <param name="width">Columns, 0 or more.</param>
    /// <param name="height">Rows, 0 or more.</param>
    public Canvas(int width, int height)
    {
        Width = Math.Max(width, 0);
        Height = Math.Max(height, 0);
        cells = new string[Height][];
        inks = new Ink[Height][];
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>What stands in a cell: a character as a person sees it; empty under the right half of a wide one.</summary>
    /// <param name="x">Column from 0.</param>
    /// <param name="y">Row from 0.</param>
    public string TextAt(int x, int y) => cells[y] is { } row ? row[x] : Blank;

    /// <summary>Which ink a cell has.</summary>
    /// <param name="x">Column from 0.</param>
    /// <param name="y">Row from 0.</param>
    public Ink InkAt(int x, int y) => inks[y] is { } row ? row[x] : Ink.Plain;

    /// <summary>Columns that a text takes.</summary>
    /// <param name="text">The text, on one line.</param>
    public static int ColumnsOf(string text) => IsPlain(text) ? text.Length : text.GetColumns();

    /// <summary>Writes a text; what passes the edge is cut.</summary>
    /// <param name="x">Column of its first character.</param>
    /// <param name="y">Row.</param>
    /// <param name="text">The text, on one line.</param>
    /// <param name="ink">Its ink.</param>
    /// <returns>The column after its last character.</returns>
    public int Write(int x, int y, string text, Ink ink = Ink.Plain)
    {
        if (IsPlain(text))
            return WritePlain(x, y, text, ink);

        var graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            var grapheme = Shown(graphemes.GetTextElement());
            var columns = Math.Max(grapheme.GetColumns(), 1);
            if (y >= 0 && y < Height && x >= 0 && x + columns <= Width)
            {
                Set(x, y, grapheme, ink);
                for (var covered = 1; covered < columns; covered++)
                    Set(x + covered, y, "", ink);
            }

            x += columns;
        }

        return x;
    }

    /// <summary>Writes a text into a field: cut with an ellipsis where it is too long, filled with blanks where it is short.</summary>
    /// <param name="x">First column of the field.</param>
    /// <param name="y">Row.</param>
    /// <param name="width">Columns of the field.</param>
    /// <param name="text">The text, on one line.</param>
    /// <param name="ink">Its ink.</param>
    public void Field(int x, int y, int width, string text, Ink ink = Ink.Plain)
    {
        if (width <= 0)
            return;

        var end = Write(x, y, Cut(text, width), ink);
        if (end < x + width)
            Write(end, y, new string(' ', x + width - end), ink);
    }

    /// <summary>Writes a text to the right edge of a field.</summary>
    /// <param name="x">First column of the field.</param>
    /// <param name="y">Row.</param>
    /// <param name="width">Columns of the field.</param>
    /// <param name="text">The text, on one line.</param>
    /// <param name="ink">Its ink.</param>
    public void FieldRight(int x, int y, int width, string text, Ink ink = Ink.Plain)
    {
        var cut = Cut(text, width);
        Field(x, y, width, new string(' ', Math.Max(0, width - ColumnsOf(cut))) + cut, ink);
    }

    /// <summary>Draws another canvas onto this one.</summary>
    /// <param name="x">Column of its left edge.</param>
    /// <param name="y">Row of its top edge.</param>
    /// <param name="other">The other canvas.</param>
    public void Paste(int x, int y, Canvas other) => Paste(x, y, other, 0, other.Height);

    /// <summary>Draws some rows of another canvas onto this one.</summary>
    /// <param name="x">Column of its left edge.</param>
    /// <param name="y">Row of the first of them here.</param>
    /// <param name="other">The other canvas.</param>
    /// <param name="from">The first of them there; all of them lie in the other canvas.</param>
    /// <param name="rows">How many.</param>
    public void Paste(int x, int y, Canvas other, int from, int rows)
    {
        var (first, end) = (Math.Max(0, -x), Math.Min(other.Width, Width - x));
        for (var row = 0; row < rows; row++)
        {
            if (y + row < 0 || y + row >= Height || (cells[y + row] is null && other.cells[from + row] is null))
                continue;

            for (var column = first; column < end; column++)
                Set(x + column, y + row, other.TextAt(column, from + row), other.InkAt(column, from + row));
        }
    }

    /// <summary>The text of a row in pieces of one ink, left to right: a terminal takes a piece quicker than its cells.</summary>
    /// <param name="y">Row from 0.</param>
    public IEnumerable<(int X, string Text, Ink Ink)> Runs(int y) => Width == 0 ? [] : Runs(y, 0, Width);

    /// <summary>The same of a part of a row.</summary>
    /// <param name="y">Row from 0.</param>
    /// <param name="from">Its first column.</param>
    /// <param name="end">The column after its last one, above <paramref name="from"/>.</param>
    public IEnumerable<(int X, string Text, Ink Ink)> Runs(int y, int from, int end)
    {
        for (var x = from + 1; x <= end; x++)
        {
            if (x < end && InkAt(x, y) == InkAt(from, y))
                continue;

            yield return (from, Text(y, from, x - from), InkAt(from, y));
            from = x;
        }
    }

    /// <summary>The parts of a row that are to be written again, a character beside each with it, so that none is written in half.</summary>
    /// <param name="y">Row from 0.</param>
    /// <param name="stands">From a column to whether what belongs there stands there already.</param>
    public IEnumerable<(int From, int End)> Parts(int y, Func<int, bool> stands)
    {
        for (var x = 0; x < Width; x++)
        {
            if (stands(x))
                continue;

            var from = Math.Max(0, x - 1);
            while (from > 0 && TextAt(from, y).Length == 0)
                from--;

            // A short stretch between two parts costs less than a new beginning.
            var end = x + 1;
            for (; x < Width && x < end + ShortestStretch; x++)
                end = stands(x) ? end : x + 1;
            end = Math.Min(Width, end + 1);
            while (end < Width && TextAt(end, y).Length == 0)
                end++;
            yield return (from, end);
            x = end - 1;
        }
    }

    /// <summary>The text of a row, right-hand blanks left out.</summary>
    /// <param name="y">Row from 0.</param>
    public string Line(int y) => Text(y, 0, Width).TrimEnd();

    /// <summary>All rows as text.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        for (var y = 0; y < Height; y++)
            text.Append(Line(y)).Append('\n');
        return text.ToString();
    }

    private static bool IsPlain(string text) => !text.AsSpan().ContainsAnyExceptInRange(' ', '~');

    private int WritePlain(int x, int y, string text, Ink ink)
    {
        if (y >= 0 && y < Height)
        {
            for (var at = Math.Max(0, -x); at < text.Length && x + at < Width; at++)
                Set(x + at, y, PlainTexts[text[at]], ink);
        }

        return x + text.Length;
    }

    private string Text(int y, int from, int length) => cells[y] is { } row ? string.Concat(row.AsSpan(from, length)) : new string(' ', length);

    private static string Cut(string text, int width)
    {
        if (ColumnsOf(text) <= width)
            return text;

        var kept = new StringBuilder();
        var used = 0;
        var graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            var grapheme = graphemes.GetTextElement();
            var columns = grapheme.GetColumns();
            if (used + columns > width - 1)
                break;
            kept.Append(grapheme);
            used += columns;
        }

        return kept.Append(Ellipsis).ToString();
    }

    // What would move the cursor or switch a mode is shown as a mark instead of being sent.
    private static string Shown(string grapheme)
    {
        if (grapheme is "\t" or "\n" or "\r\n" or "\r" or "\u00A0")
            return " ";
        var rune = Rune.GetRuneAt(grapheme, 0);
        return Rune.IsControl(rune) || Rune.GetUnicodeCategory(rune) == UnicodeCategory.Format ? "\uFFFD" : grapheme;
    }

    private void Set(int x, int y, string text, Ink ink)
    {
        if (cells[y] is not { } row)
        {
            row = new string[Width];
            Array.Fill(row, Blank);
            (cells[y], inks[y]) = (row, new Ink[Width]);
        }

        row[x] = text;
        inks[y]![x] = ink;
    }
}
