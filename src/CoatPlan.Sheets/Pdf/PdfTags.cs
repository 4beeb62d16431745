using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Drawing;

namespace CoatPlan.Sheets.Pdf;

/// <summary>Tags on paper, two in a row, each with dashes to cut along and a ring where the hole goes.</summary>
internal static class PdfTags
{
    private const int InARow = 2;
    private const double Pad = 10;
    private const double Left = 62;
    private const double Line = 12;
    private const double Writing = 17;
    private const double LeastHeight = 112;
    private const double Hole = 6;

    private static readonly TypeFace Number = new(30, TypeWeight.Bold);
    private static readonly TypeFace Name = new(11, TypeWeight.Bold);
    private static readonly TypeFace Small = new(8.5);

    public static void Draw(SheetPen pen, Tags tags)
    {
        var width = pen.Width / InARow;
        foreach (var row in tags.Items.Chunk(InARow))
        {
            var height = row.Max(tag => HeightOf(pen, tag, width));
            pen.Draw(new Picture(pen.Width, height, [.. row.SelectMany((tag, index) => Marks(pen, tag, index * width, width, height))]));
        }

        pen.Space(Pad);
    }

    private static double HeightOf(SheetPen pen, Tag tag, double width) => Math.Max(
        LeastHeight, (2 * Pad) + (NameOf(pen, tag, width).Length * 1.2 * Name.Size) + (tag.Lines.Length * Line) + (Rows(tag).Count() * Writing));

    private static ImmutableArray<string> NameOf(SheetPen pen, Tag tag, double width) => pen.Lines(tag.Name, Name, width - Left - Pad);

    private static IEnumerable<string[]> Rows(Tag tag) => tag.Blanks.Chunk(2);

    private static IEnumerable<Mark> Marks(SheetPen pen, Tag tag, double x, double width, double height)
    {
        yield return new Stroke([(x, 0), (x + width, 0), (x + width, height), (x, height), (x, 0)], 0.6, [4, 3], 0);
        yield return new Stroke([.. Enumerable.Range(0, 25).Select(i => (x + (Left / 2) + (Hole * Math.Cos(i * Math.PI / 12)), Pad + Hole + (Hole * Math.Sin(i * Math.PI / 12))))], 0.6, [], 0);
        yield return new Lettering(x + ((Left - pen.WidthOf(tag.Number, Number)) / 2), Pad + (3 * Hole) + Number.Size, tag.Number, Number);
        var y = Pad + Name.Size - 2;
        foreach (var line in NameOf(pen, tag, width))
        {
            yield return new Lettering(x + Left, y, line, Name);
            y += 1.2 * Name.Size;
        }

        foreach (var line in tag.Lines)
        {
            yield return new Lettering(x + Left, y, line, Small);
            y += Line;
        }

        y = height - Pad - ((Rows(tag).Count() - 1) * Writing);
        foreach (var row in Rows(tag))
        {
            var share = (width - Left - Pad) / row.Length;
            for (var i = 0; i < row.Length; i++)
            {
                var from = x + Left + (i * share);
                yield return new Lettering(from, y, row[i], Small);
                yield return Stroke.Line(from + pen.WidthOf(row[i], Small) + 3, y + 1, from + share - 4, y + 1);
            }

            y += Writing;
        }
    }
}
