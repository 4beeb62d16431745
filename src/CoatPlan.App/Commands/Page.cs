using CoatPlan.App.Wording;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Commands;

/// <summary>Text for a terminal or a pipe: lines no wider than the style's width.</summary>
internal sealed class Page
{
    /// <summary>Columns by which what stands under a heading is moved in.</summary>
    public const int Indent = 2;

    private const int LabelWidth = 13;

    private const int AmountColumn = 56;

    private readonly List<string> lines = [];

    private Page(TextStyle style) => Style = style;

    /// <summary>Units, currency, width, emphasis.</summary>
    public TextStyle Style { get; }

    /// <summary>The lines that are written to a page; one narrower than can be read is as wide as the narrowest.</summary>
    public static IReadOnlyList<string> Of(TextStyle style, Action<Page> write)
    {
        var page = new Page(style with { Width = Math.Max(style.Width, TextStyle.Narrowest) });
        write(page);
        return page.lines;
    }

    /// <summary>An empty line.</summary>
    public void Blank() => lines.Add("");

    /// <summary>What the page is about, underlined.</summary>
    public void Title(string text)
    {
        foreach (var line in Wrapping.Lines(text, Style.Width))
        {
            lines.Add(Emphasised(line));
            lines.Add(new string('=', line.Length));
        }
    }

    /// <summary>A heading after an empty line, underlined.</summary>
    public void Heading(string text)
    {
        Blank();
        foreach (var line in Wrapping.Lines(text, Style.Width))
        {
            lines.Add(Emphasised(line));
            lines.Add(new string('-', line.Length));
        }
    }

    /// <summary>A word and what it comes to, in two columns.</summary>
    public void Field(string label, string text) => lines.AddRange(Wrapping.Hanging(label.PadRight(LabelWidth), text, Style.Width));

    /// <summary>A word and two things that stand side by side, each wrapped in its own column.</summary>
    public void Columns(string label, string left, string right)
    {
        var width = Math.Max(1, (Style.Width - LabelWidth - Indent) / 2);
        var (lefts, rights) = (Wrapping.Lines(left, width).ToArray(), Wrapping.Lines(right, width).ToArray());
        for (var i = 0; i < Math.Max(lefts.Length, rights.Length); i++)
        {
            var row = $"{(i == 0 ? label : "").PadRight(LabelWidth)}{(i < lefts.Length ? lefts[i] : "").PadRight(width + Indent)}{(i < rights.Length ? rights[i] : "")}";
            lines.Add(row.TrimEnd());
        }
    }

    /// <summary>A paragraph, moved in.</summary>
    public void Text(int indent, string text) => lines.AddRange(Wrapping.Hanging(new string(' ', indent), text, Style.Width));

    /// <summary>An item of a list.</summary>
    public void Bullet(string mark, string text) =>
        lines.AddRange(Wrapping.Hanging($"{new string(' ', Indent)}{mark} ", text, Style.Width));

    /// <summary>A line that catches the eye.</summary>
    public void Strong(int indent, string lead, string text)
    {
        var hung = Wrapping.Hanging(new string(' ', indent) + lead, text, Style.Width);
        lines.AddRange(hung.Select(Emphasised));
    }

    /// <summary>An amount of money at the right of its column.</summary>
    public void Amount(string label, decimal amount, string currency) => Row(label, Written.Money(amount, currency));

    /// <summary>A value at the right of its column.</summary>
    public void Row(string label, string value)
    {
        var column = Math.Min(AmountColumn, Style.Width);
        lines.Add($"{new string(' ', Indent)}{PlainText.Of(label).PadRight(Math.Max(column - value.Length - Indent, label.Length + 1))}{value}");
    }

    private string Emphasised(string text) => Style.Emphasis ? $"\e[1m{text}\e[22m" : text;
}
