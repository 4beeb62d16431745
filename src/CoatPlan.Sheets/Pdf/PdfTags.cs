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
    private const double Before = 3;
    private const double After = 4;

    private static readonly TypeFace Number = new(30, TypeWeight.Bold);
    private static readonly TypeFace Name = new(11, TypeWeight.Bold);
    private static readonly TypeFace Small = new(8.5);

    public static void Draw(SheetPen pen, Tags tags)
    {
        var width = pen.Width / InARow;
        foreach (var row in tags.Items.Chunk(InARow))
        {
            var height = row.Max(tag => HeightOf(pen, tag, width));
            var isTop = pen.Need(height) || ReferenceEquals(row[0], tags.Items[0]);
            pen.Draw(new Picture(pen.Width, height, [.. row.SelectMany((tag, index) => Marks(pen, tag, index * width, width, height)), .. Cuts(row.Length, width, height, isTop)]));
        }

        pen.Space(Pad);
    }

    private static double HeightOf(SheetPen pen, Tag tag, double width) => Math.Max(
        LeastHeight, (2 * Pad) + (NameOf(pen, tag, width).Length * 1.2 * Name.Size) + (tag.Lines.Length * Line) + (Rows(tag).Count() * Writing));

    // Each cut is drawn once: the dashes of two tags along one line would fill each other's gaps.
    private static IEnumerable<Mark> Cuts(int tags, double width, double height, bool isTop)
    {
        if (isTop)
            yield return Cut(0, 0, tags * width, 0);
        for (var edge = 0; edge <= tags; edge++)
            yield return Cut(edge * width, 0, edge * width, height);
        yield return Cut(0, height, tags * width, height);
    }

    private static Stroke Cut(double x, double y, double toX, double toY) => new([(x, y), (toX, toY)], 0.6, [4, 3], 0);

    private static ImmutableArray<string> NameOf(SheetPen pen, Tag tag, double width) => pen.Lines(tag.Name, Name, width - Left - Pad);

    private static IEnumerable<string[]> Rows(Tag tag) => tag.Blanks.Chunk(2);

    private static IEnumerable<Mark> Marks(SheetPen pen, Tag tag, double x, double width, double height)
    {
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
            // Lines to write on are as long as one another, however long the words before them.
            var line = ((width - Left - Pad - row.Sum(label => pen.WidthOf(label, Small))) / row.Length) - Before - After;
            var from = x + Left;
            foreach (var label in row)
            {
                yield return new Lettering(from, y, label, Small);
                from += pen.WidthOf(label, Small) + Before;
                yield return Stroke.Line(from, y + 1, from + line, y + 1);
                from += line + After;
            }

            y += Writing;
        }
    }
}
