using System.Text;
using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Text;

/// <summary>The timeline as plain text: 24 hours across, three characters each, so that one character is 20 minutes.</summary>
internal static class TextTimeline
{
    private const int PerHour = 3;
    private const int MinutesEach = 60 / PerHour;
    private const int LabelWidth = TextSheet.Width - (NodaConstants.HoursPerDay * PerHour);
    private const int HoursBetweenReadings = 2;

    public static void Write(StringBuilder text, Timeline timeline)
    {
        foreach (var line in (string[])
            [
                "One character is 20 minutes: = work, % work that makes dust, # spraying,",
                "- dries by itself, <...| a coat may start, to its last start inside its",
                "windows, _ somebody may work. Hours without _ are night, breaks or days off.",
            ])
        {
            text.Append(line).Append('\n');
        }

        foreach (var day in timeline.Days)
            Write(text, day, timeline.DegreeUnit);
    }

    private static void Write(StringBuilder text, TimelineDay day, string unit)
    {
        text.Append('\n').Append(day.Title).Append('\n');
        if (day.Lanes.IsEmpty)
            return;

        Row(text, "", string.Concat(Enumerable.Range(0, NodaConstants.HoursPerDay).Select(hour => PlanWords.Hour(hour) + " ")));
        Row(text, "open", Line(day.Open.SelectMany(span => Fill(span.From, span.To, day.Date, '_'))));
        if (!day.Ranges.IsEmpty)
            text.Append("air ").Append(day.Ranges[0]).Append(", metal ").Append(day.Ranges[1]).Append(", dew point ").Append(day.Ranges[2]).Append('\n');
        Readings(text, $"air {unit}", day, one => one.Air);
        Readings(text, "metal", day, one => one.Metal);
        Readings(text, "dew pt", day, one => one.DewPoint);
        foreach (var lane in day.Lanes)
        {
            foreach (var line in Wrapping.Lines(lane.Title, TextSheet.Width))
                text.Append(line).Append('\n');
            Row(text, "", Line(lane.Bars.Where(bar => bar.Kind != TimelineKind.Window).OrderByDescending(bar => bar.Kind == TimelineKind.Wait).SelectMany(bar => Fill(bar.From, bar.To, day.Date, GlyphOf(bar.Kind)))));
            var windows = lane.Bars.Where(bar => bar.Kind == TimelineKind.Window).ToArray();
            if (windows.Length > 0)
                Row(text, "  start", Line(windows.SelectMany(bar => Ends(Fill(bar.From, bar.To, day.Date, '.').ToArray()))));
            var works = lane.Bars.Where(bar => !bar.Texts.IsEmpty).Select(bar => $"{PlanWords.Clock(bar.From)} {bar.Texts[0]}");
            foreach (var line in Wrapping.Hanging("        ", string.Join(", ", works), TextSheet.Width))
                text.Append(line.TrimEnd()).Append('\n');
        }
    }

    private static char GlyphOf(TimelineKind kind) => kind switch
    {
        TimelineKind.Hands => '=',
        TimelineKind.Dust => '%',
        TimelineKind.Spray => '#',
        TimelineKind.Wait => '-',
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A kind of stretch on a lane's own line."),
    };

    private static IEnumerable<(int Column, char Glyph)> Ends((int Column, char Glyph)[] window)
    {
        for (var i = 0; i < window.Length; i++)
            yield return (window[i].Column, i == window.Length - 1 ? '|' : i == 0 ? '<' : window[i].Glyph);
    }

    private static IEnumerable<(int Column, char Glyph)> Fill(LocalDateTime from, LocalDateTime to, LocalDate day, char glyph)
    {
        var first = Column(from, day);
        var last = Math.Max(first, to.Date > day ? (NodaConstants.HoursPerDay * PerHour) - 1 : Column(to.PlusMinutes(-1), day));
        return Enumerable.Range(first, last - first + 1).Select(column => (column, glyph));
    }

    private static int Column(LocalDateTime time, LocalDate day) => time.Date < day ? 0 : (time.Hour * PerHour) + (time.Minute / MinutesEach);

    private static string Line(IEnumerable<(int Column, char Glyph)> glyphs)
    {
        var line = Enumerable.Repeat(' ', NodaConstants.HoursPerDay * PerHour).ToArray();
        foreach (var (column, glyph) in glyphs)
            line[column] = glyph;
        return new string(line);
    }

    private static void Readings(StringBuilder text, string label, TimelineDay day, Func<TimelineAir, string> of)
    {
        var line = new StringBuilder();
        foreach (var hour in Enumerable.Range(0, NodaConstants.HoursPerDay).Where(hour => hour % HoursBetweenReadings == 0))
        {
            var read = day.Air.FirstOrDefault(one => one.At == day.Date.AtMidnight().PlusHours(hour));
            line.Append((read is null ? "" : of(read)).PadRight(PerHour * HoursBetweenReadings));
        }

        Row(text, label, line.ToString());
    }

    private static void Row(StringBuilder text, string label, string line) =>
        text.Append((label.PadRight(LabelWidth) + line).TrimEnd()).Append('\n');
}
