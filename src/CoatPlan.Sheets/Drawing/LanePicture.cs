using System.Globalization;
using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Drawing;

/// <summary>A lane of a day: its title in the gutter, its bars by the hour with what fits written above them, and below them when its coats may start.</summary>
internal sealed class LanePicture
{
    private const double Labels = 7.5;
    private const double BarHeight = 7;
    private const double TitleLine = 8;
    private const int MostTitleLines = 3;
    private const double LeastBar = 0.8;
    private const double HatchStep = 2.2;

    private static readonly TypeFace Small = new(6.5);
    private static readonly TypeFace Strong = new(6.5, TypeWeight.Bold);

    private readonly TimelineLane lane;
    private readonly LocalDate day;
    private readonly HourScale scale;
    private readonly double gutter;
    private readonly Func<string, TypeFace, double> measure;
    private readonly TimelineSpacing spacing;
    private readonly ImmutableArray<string> title;
    private readonly ImmutableArray<(TimelineBar Bar, int Row)> windows;

    /// <summary>A lane, ready to be drawn.</summary>
    public LanePicture(TimelineLane lane, LocalDate day, HourScale scale, double gutter, Func<string, TypeFace, double> measure, TimelineSpacing spacing)
    {
        this.spacing = spacing;
        this.lane = lane;
        this.day = day;
        this.scale = scale;
        this.gutter = gutter;
        this.measure = measure;
        title = Title();
        windows = Windows();
        var rows = windows.IsEmpty ? 0 : windows.Max(pair => pair.Row) + 1;
        Height = Math.Max(Labels + BarHeight + (rows * spacing.WindowRow), title.Length * TitleLine) + (2 * spacing.Pad);
    }

    /// <summary>Its height, points.</summary>
    public double Height { get; }

    /// <summary>A bar as it is drawn.</summary>
    public static IEnumerable<Mark> Bar(TimelineKind kind, double x, double y, double width)
    {
        var wide = Math.Max(width, LeastBar);
        return kind switch
        {
            TimelineKind.Spray => [Area.Box(x, y, wide, BarHeight, 0)],
            TimelineKind.Dust => [Area.Box(x, y, wide, BarHeight, 1), .. Hatch(x, y, wide), Stroke.Box(x, y, wide, BarHeight)],
            TimelineKind.Hands => [Area.Box(x, y, wide, BarHeight, 0.72), Stroke.Box(x, y, wide, BarHeight)],
            TimelineKind.Wait => [new Stroke([(x, y + (BarHeight / 2)), (x + width, y + (BarHeight / 2))], 1, [1, 2], 0), Stroke.Line(x + width, y + 1, x + width, y + BarHeight - 1)],
            TimelineKind.Window =>
            [
                Stroke.Line(x, y, x, y + 3), Stroke.Line(x, y + 1.5, x + width, y + 1.5, 0.6),
                new Area([(x + width - 2, y), (x + width + 2, y), (x + width, y + 3.6)], 0),
            ],
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A kind of stretch."),
        };
    }

    /// <summary>Its marks, at a height.</summary>
    public IEnumerable<Mark> At(double top)
    {
        for (var line = 0; line < title.Length; line++)
            yield return new Lettering(0, top + spacing.Pad + 6.5 + (line * TitleLine), title[line], Small);
        var y = top + spacing.Pad + Labels;
        foreach (var mark in lane.Bars.Where(bar => bar.Kind == TimelineKind.Wait).Concat(lane.Bars.Where(IsWork)).SelectMany(bar => Bar(bar.Kind, Left(bar), y, Right(bar) - Left(bar))))
            yield return mark;
        foreach (var mark in Words(y - 1.5))
            yield return mark;
        foreach (var (bar, row) in windows)
        {
            foreach (var mark in Bar(TimelineKind.Window, Left(bar), y + BarHeight + 0.7 + (row * spacing.WindowRow), Right(bar) - Left(bar)))
                yield return mark;
        }
    }

    private static bool IsWork(TimelineBar bar) => bar.Kind is TimelineKind.Hands or TimelineKind.Dust or TimelineKind.Spray;

    private static IEnumerable<Mark> Hatch(double x, double y, double width)
    {
        for (var at = HatchStep; at < width + BarHeight; at += HatchStep)
        {
            var (fromX, fromY) = at <= BarHeight ? (x, y + at) : (x + at - BarHeight, y + BarHeight);
            var (toX, toY) = at <= width ? (x + at, y) : (x + width, y + at - width);
            yield return Stroke.Line(fromX, fromY, toX, toY, 0.4);
        }
    }

    // Coats first: they are what the day is planned around. Then whatever still finds room, the longest first.
    private IEnumerable<Mark> Words(double baseline)
    {
        var taken = new List<(double From, double To)>();
        var end = gutter + scale.Hour(NodaConstants.HoursPerDay);
        foreach (var bar in lane.Bars.Where(bar => IsWork(bar) && !bar.Texts.IsEmpty).OrderBy(bar => bar.Kind == TimelineKind.Spray ? 0 : 1).ThenByDescending(bar => Right(bar) - Left(bar)))
        {
            var type = bar.Kind == TimelineKind.Spray ? Strong : Small;
            foreach (var text in bar.Texts)
            {
                var (from, to) = (Left(bar), Left(bar) + measure(text, type) + 3);
                if (to > end || taken.Any(other => from < other.To && other.From < to))
                    continue;

                taken.Add((from, to));
                yield return new Lettering(from, baseline, text, type);
                break;
            }
        }
    }

    private double Left(TimelineBar bar) => gutter + scale.At(bar.From, day);

    private double Right(TimelineBar bar) => gutter + scale.At(bar.To, day);

    private ImmutableArray<(TimelineBar Bar, int Row)> Windows()
    {
        var free = new List<double>();
        var rows = ImmutableArray.CreateBuilder<(TimelineBar, int)>();
        foreach (var bar in lane.Bars.Where(bar => bar.Kind == TimelineKind.Window))
        {
            var row = free.FindIndex(right => right + 3 <= Left(bar));
            if (row < 0)
            {
                row = free.Count;
                free.Add(0);
            }

            free[row] = Right(bar);
            rows.Add((bar, row));
        }

        return rows.ToImmutable();
    }

    // What does not fit is on the work sheet in full.
    private ImmutableArray<string> Title()
    {
        var room = gutter - 4;
        var lines = new List<string> { "" };
        foreach (var word in PlainText.Of(lane.Title).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = lines[^1].Length == 0 ? word : $"{lines[^1]} {word}";
            if (lines[^1].Length == 0 || measure(longer, Small) <= room)
                lines[^1] = longer;
            else
                lines.Add(word);
        }

        return [.. lines.Take(MostTitleLines).Select((line, index) => Cut(line, index == MostTitleLines - 1 && lines.Count > MostTitleLines ? "…" : "", room))];
    }

    private string Cut(string line, string end, double room)
    {
        if (measure(line + end, Small) <= room)
            return line + end;

        var letters = new StringInfo(line);
        var count = letters.LengthInTextElements;
        while (count > 1 && measure(letters.SubstringByTextElements(0, count) + "…", Small) > room)
            count--;
        return letters.SubstringByTextElements(0, count) + "…";
    }
}
