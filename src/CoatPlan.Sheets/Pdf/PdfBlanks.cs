namespace CoatPlan.Sheets.Pdf;

/// <summary>Words with a line behind each to write on, sharing the width of the page.</summary>
internal static class PdfBlanks
{
    private const double Gap = 6;
    private const double LineHeight = 20;
    private const double LeastLine = 40;

    public static void Draw(SheetPen pen, ImmutableArray<string> labels)
    {
        var words = labels.Sum(label => pen.WidthOf(label, pen.Body));
        var line = Math.Max(LeastLine, (pen.Width - words - (2 * Gap * labels.Length)) / labels.Length);
        pen.Need(LineHeight);
        var x = pen.Left;
        foreach (var label in labels)
        {
            pen.Space(LineHeight - SheetPen.LineOf(pen.Body));
            pen.Line(label, pen.Body, x);
            pen.Space(SheetPen.LineOf(pen.Body) - LineHeight);
            x += pen.WidthOf(label, pen.Body) + Gap;
            pen.Rule(x, line, pen.Y + LineHeight - 1);
            x += line + Gap;
        }

        pen.Space(LineHeight + Gap);
    }
}
