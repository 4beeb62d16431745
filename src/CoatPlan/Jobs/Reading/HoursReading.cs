using System.Globalization;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using NodaTime.Text;
using Mark = CoatPlan.Problems.Mark;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>crew.hours</c> and checks that the entries agree.</summary>
internal static class HoursReading
{
    private static readonly string[] DayNames = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];

    /// <summary>Reads the entries in the order of the file.</summary>
    public static ImmutableArray<HoursEntry> Read(MapReading crew)
    {
        var entries = ImmutableArray.CreateBuilder<HoursEntry>();
        bool allRead = true;
        if (!JobRanges.HoursEntries.Hold(Math.Max(1, crew.Entries("hours").Length)))
        {
            crew.Note("hours", Sentences.TooManyHours((int)JobRanges.HoursEntries.Most));
            return [];
        }

        foreach (var (key, value) in crew.Entries("hours").Select(entry => (entry.Key, entry.Value)))
        {
            var spans = Spans(value, crew.Context);
            var days = Days(key, crew.Context);
            allRead &= spans is not null && days is not null;
            if (days is not null) entries.Add(days with { Spans = spans ?? [] });
        }

        var hours = entries.ToImmutable();
        CheckRepeated(hours, crew.Context);
        if (!allRead || hours.IsEmpty) return hours;
        if (hours.All(entry => entry.Spans.IsEmpty)) crew.Note("hours", Sentences.NoHours());
        CheckNights(hours, crew.Context);
        return hours;
    }

    private static HoursEntry? Days(TextNode key, ReadingContext context)
    {
        string text = key.Text.Trim();
        if (text.Length > 0 && char.IsAsciiDigit(text[0])) return Date(key, text, context);
        string[] ends = text.Replace('–', '-').Split('-', StringSplitOptions.TrimEntries);
        var days = ends.Select(Day).ToArray();
        if (ends.Length is 1 or 2 && days.All(day => day is not null)) return new() { From = days[0], To = days[^1], Mark = key.Mark };
        int wrong = Array.FindIndex(days, day => day is null);
        string? near = wrong < 0 ? null : Nearest.To(ends[wrong], DayNames.Concat(DayNames.Select(name => name[..3])));
        if (near is not null) ends[wrong] = CultureInfo.InvariantCulture.TextInfo.ToTitleCase(near[..3]);
        context.Problems.Add(key.Mark, Sentences.NotADay(key.Text, near is null ? null : string.Join('-', ends)));
        return null;
    }

    private static HoursEntry? Date(TextNode key, string text, ReadingContext context)
    {
        var parsed = LocalDatePattern.Iso.Parse(text);
        if (parsed.Success && JobRanges.Year.Hold(parsed.Value.Year)) return new() { Date = parsed.Value, Mark = key.Mark };
        context.Problems.Add(key.Mark, Sentences.NotADay(key.Text, mend: null));
        return null;
    }

    private static IsoDayOfWeek? Day(string text)
    {
#pragma warning disable CA1308 // Names of days are compared in lower case.
        string name = text.TrimEnd('.').ToLowerInvariant();
#pragma warning restore CA1308
        if (name is "tues" or "thur" or "thurs") name = name[..3];
        int day = Array.FindIndex(DayNames, known => known == name || known[..3] == name);
        return day < 0 ? null : (IsoDayOfWeek)(day + 1);
    }

    private static ImmutableArray<HoursSpan>? Spans(Node node, ReadingContext context)
    {
        var spans = ImmutableArray.CreateBuilder<(HoursSpan Span, string Text, Mark Mark)>();
        bool sound = true;
        foreach (var item in Values.OneOrItems(node))
        {
            if (Values.Scalar(item, "the hours", "a span such as `16:00-21:00`, or `none`", context) is not { } scalar)
            {
                sound = false;
                continue;
            }

            if (item == node && JobWords.Fold(scalar.Text) == "none") return [];
            foreach (string part in scalar.Text.Split(',', StringSplitOptions.TrimEntries))
            {
                if (Span(part, scalar, context) is { } span) spans.Add((span, part, scalar.Mark));
                else sound = false;
            }
        }

        if (!sound) return null;
        var ordered = spans.OrderBy(span => span.Span.Start).ToArray();
        for (int i = 1; i < ordered.Length; i++)
        {
            var before = ordered[i - 1].Span;
            if (!before.EndsNextDay && before.End <= ordered[i].Span.Start) continue;
            var later = ordered[i].Mark.CompareTo(ordered[i - 1].Mark) > 0 ? ordered[i] : ordered[i - 1];
            context.Problems.Add(later.Mark, Sentences.SpansOverlap(later.Text));
            return null;
        }

        return [.. ordered.Select(span => span.Span)];
    }

    private static HoursSpan? Span(string text, TextNode node, ReadingContext context)
    {
        string[] ends = text.Replace('–', '-').Split('-', StringSplitOptions.TrimEntries);
        if (ends.Length != 2 || Clock(ends[0]) is not { } start || (ends[1] == "24:00" ? LocalTime.Midnight : Clock(ends[1])) is not { } end)
        {
            context.Problems.Add(node.Mark, Sentences.NotHours(text));
            return null;
        }

        if (start != end) return new(start, end);
        context.Problems.Add(node.Mark, Sentences.EmptySpan(text));
        return null;
    }

    private static LocalTime? Clock(string text)
    {
        string[] parts = text.Split(':');
        bool shaped = parts.Length == 2 && parts[0].Length is 1 or 2 && parts[1].Length == 2 && parts.All(part => part.All(char.IsAsciiDigit));
        if (!shaped) return null;
        int hour = int.Parse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture);
        int minute = int.Parse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture);
        return hour < 24 && minute < 60 ? new LocalTime(hour, minute) : null;
    }

    // Two dates, two days or two ranges that share a day: neither beats the other.
    private static void CheckRepeated(ImmutableArray<HoursEntry> hours, ReadingContext context)
    {
        for (int later = 1; later < hours.Length; later++)
        {
            var first = hours.Take(later).FirstOrDefault(entry => AreEqual(entry, hours[later]));
            if (first is not null) context.Problems.Add(hours[later].Mark, Sentences.HoursTaken(Name(hours[later]), first.Mark));
        }
    }

    private static bool AreEqual(HoursEntry a, HoursEntry b)
    {
        if (a.Date is not null || b.Date is not null) return a.Date == b.Date;
        return Week(new LocalDate(2027, 5, 10)).Any(date => a.RankOn(date) > 0 && a.RankOn(date) == b.RankOn(date));
    }

    private static string Name(HoursEntry entry) => entry.Date is { } date
        ? LocalDatePattern.Iso.Format(date)
        : entry.From == entry.To ? $"{entry.From}"[..3] : $"{entry.From}"[..3] + "-" + $"{entry.To}"[..3];

    // A span that ends on the next day must end before that day's first span begins.
    private static void CheckNights(ImmutableArray<HoursEntry> hours, ReadingContext context)
    {
        var dates = hours.Select(entry => entry.Date).OfType<LocalDate>().SelectMany(date => new[] { date.PlusDays(-1), date });
        // No date of a job lies in this week, so that only days and ranges speak of it.
        var dateless = new LocalDate(1960, 1, 4);
        var told = new HashSet<Mark>();
        foreach (var date in dates.Concat(Week(dateless)))
        {
            var evening = WorkingHours.On(hours, date);
            var morning = WorkingHours.On(hours, date.PlusDays(1));
            if (evening.IsEmpty || morning.IsEmpty || !evening[^1].EndsNextDay || evening[^1].End <= morning[0].Start) continue;
            var mark = hours.MaxBy(entry => entry.RankOn(date.PlusDays(1)))!.Mark;
            string span = $"{Written(morning[0].Start)}-{Written(morning[0].End)}";
            if (told.Add(mark)) context.Problems.Add(mark, Sentences.SpansOverlap(span));
        }
    }

    private static string Written(LocalTime time) => LocalTimePattern.CreateWithInvariantCulture("HH:mm").Format(time);

    private static IEnumerable<LocalDate> Week(LocalDate monday) => Enumerable.Range(0, 7).Select(monday.PlusDays);
}
