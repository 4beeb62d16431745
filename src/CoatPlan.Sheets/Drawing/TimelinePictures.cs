using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Drawing;

/// <summary>The timeline drawn: a picture for each day and one for what its marks mean. Black on white, told apart by shape and not by colour.</summary>
internal sealed class TimelinePictures
{
    private const double Gutter = 116;
    private const double Ruler = 11;
    private const double Closed = 0.87;

    private static readonly TypeFace Small = new(6.5);
    private static readonly TypeFace Strong = new(8.5, TypeWeight.Bold);
    private static readonly ImmutableArray<string> CurveNames = ["air", "metal, coldest piece", "dew point"];

    private readonly Timeline timeline;
    private readonly double width;
    private readonly Func<string, TypeFace, double> measure;
    private readonly HourScale scale;

    /// <summary>The pictures of a timeline.</summary>
    /// <param name="timeline">The timeline.</param>
    /// <param name="width">Their width, points.</param>
    /// <param name="measure">How wide a text is, points.</param>
    public TimelinePictures(Timeline timeline, double width, Func<string, TypeFace, double> measure)
    {
        this.timeline = timeline;
        this.width = width;
        this.measure = measure;
        scale = new HourScale(timeline.Wide, width - Gutter);
    }

    /// <summary>What the marks mean, in lines as wide as the pictures.</summary>
    public Picture Legend()
    {
        const double sample = 26, line = 11, between = 12;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var (x, y) = (0.0, 0.0);
        foreach (var (text, draw) in Samples())
        {
            var wide = sample + 3 + measure(text, Small);
            if (x > 0 && x + wide > width)
                (x, y) = (0, y + line);
            marks.AddRange(draw(x, y + 1, sample));
            marks.Add(new Lettering(x + sample + 3, y + 7.5, text, Small));
            x += wide + between;
        }

        return new Picture(width, y + line + 2, marks.ToImmutable());
    }

    /// <summary>A day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="spacing">How much room it has.</param>
    public Picture Of(TimelineDay day, TimelineSpacing spacing)
    {
        if (day.Lanes.IsEmpty)
            return new Picture(width, Ruler + spacing.BetweenDays, [new Lettering(0, 9, day.Title, Strong)]);

        var marks = ImmutableArray.CreateBuilder<Mark>();
        var lanes = day.Lanes.Select(lane => new LanePicture(lane, day.Date, scale, Gutter, measure, spacing)).ToArray();
        var curves = day.Air.Length > 1 ? spacing.Curves : 0;
        var height = Ruler + curves + lanes.Sum(lane => lane.Height);
        Background(marks, day, height);
        marks.Add(new Lettering(0, 8.5, PlanWords.DayAndMonth(day.Date), Strong));
        if (curves > 0)
            Air(marks, day, spacing);
        var y = Ruler + curves;
        foreach (var lane in lanes)
        {
            marks.Add(Stroke.Line(0, y, width, y, 0.25, 0.5));
            marks.AddRange(lane.At(y));
            y += lane.Height;
        }

        marks.Add(Stroke.Box(Gutter, Ruler, width - Gutter, height - Ruler));
        return new Picture(width, height + spacing.BetweenDays, marks.ToImmutable());
    }

    private void Background(ImmutableArray<Mark>.Builder marks, TimelineDay day, double height)
    {
        marks.Add(Area.Box(Gutter, Ruler, width - Gutter, height - Ruler, Closed));
        foreach (var span in day.Open)
        {
            var (from, to) = (scale.At(span.From, day.Date), scale.At(span.To, day.Date));
            marks.Add(Area.Box(Gutter + from, Ruler, to - from, height - Ruler, 1));
        }

        var free = 0.0;
        for (var hour = 0; hour <= NodaConstants.HoursPerDay; hour++)
        {
            var x = Gutter + scale.Hour(hour);
            marks.Add(Stroke.Line(x, Ruler - 2, x, height, 0.25, 0.6));
            if (hour == NodaConstants.HoursPerDay)
                break;

            var text = PlanWords.Hour(hour);
            var wide = measure(text, Small);
            var left = Math.Min(x - (wide / 2), width - wide);
            if (left < free)
                continue;

            marks.Add(new Lettering(left, Ruler - 3.5, text, Small));
            free = left + wide + 2;
        }
    }

    private void Air(ImmutableArray<Mark>.Builder marks, TimelineDay day, TimelineSpacing spacing)
    {
        var low = timeline.LowC;
        var span = Math.Max(timeline.HighC - low, 1);
        for (var curve = 0; curve < CurveNames.Length; curve++)
        {
            var of = curve;
            ImmutableArray<(double X, double Y)> points =
            [
                .. day.Air.Select(one => (
                    Gutter + (one.At.Date > day.Date ? width - Gutter : scale.At(one.At, day.Date)),
                    Ruler + spacing.Curves - 4 - ((spacing.Curves - 8) * (ValueOf(one, of) - low) / span))),
            ];
            marks.Add(Line(points, curve));
            var y = Ruler + spacing.CurveLine - 1 + (curve * spacing.CurveLine);
            marks.Add(Line([(0, y - 2.5), (16, y - 2.5)], curve));
            marks.Add(new Lettering(19, y, $"{CurveNames[curve].Split(',')[0]} {day.Ranges[curve]}", Small));
        }
    }

    private static double ValueOf(TimelineAir one, int curve) => curve switch { 0 => one.AirC, 1 => one.MetalC, _ => one.DewPointC };

    private static Stroke Line(ImmutableArray<(double X, double Y)> points, int curve) => curve switch
    {
        0 => new Stroke(points, 0.6, [], 0),
        1 => new Stroke(points, 1.6, [], 0.3),
        _ => new Stroke(points, 0.9, [3, 2], 0),
    };

    private static IEnumerable<(string Text, Func<double, double, double, IEnumerable<Mark>> Draw)> Samples()
    {
        yield return ("hands-on work", (x, y, w) => LanePicture.Bar(TimelineKind.Hands, x, y, w));
        yield return ("work that makes dust", (x, y, w) => LanePicture.Bar(TimelineKind.Dust, x, y, w));
        yield return ("spraying", (x, y, w) => LanePicture.Bar(TimelineKind.Spray, x, y, w));
        yield return ("dries by itself", (x, y, w) => LanePicture.Bar(TimelineKind.Wait, x, y, w));
        yield return ("a coat may start, to its last start inside its windows", (x, y, w) => LanePicture.Bar(TimelineKind.Window, x, y + 2, w - 3));
        yield return ("nobody works: night, breaks, days off", (x, y, w) => [Area.Box(x, y, w, 7, Closed), Stroke.Box(x, y, w, 7, 0.25)]);
        for (var curve = 0; curve < CurveNames.Length; curve++)
        {
            var of = curve;
            yield return (CurveNames[curve], (x, y, w) => [Line([(x, y + 3.5), (x + w, y + 3.5)], of)]);
        }

        yield return ("hours without work on any day are drawn narrow", (x, y, w) => [.. Enumerable.Range(0, 5).Select(i => Stroke.Line(x + (i * w / 4), y, x + (i * w / 4), y + 7, 0.25, 0.3))]);
    }
}
