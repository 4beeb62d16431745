using System.Globalization;
using System.Text.RegularExpressions;
using YamlDotNet.RepresentationModel;

namespace CoatPlan.Tests.Validator;

/// <summary>When hands may work: a date beats a weekday beats a range of weekdays; set-up and put-away already taken off each span.</summary>
internal sealed partial class CrewHours
{
    private static readonly string[] s_weekdays = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];
    private readonly Dictionary<double, ImmutableArray<Span>> _byDate = [];
    private readonly Dictionary<int, ImmutableArray<Span>> _byWeekday = [];
    private readonly Dictionary<int, ImmutableArray<Span>> _byRange = [];
    private readonly double _setUp;
    private readonly double _putAway;

    private CrewHours(double setUp, double putAway) => (_setUp, _putAway) = (setUp, putAway);

    public static CrewHours Read(YamlMappingNode hours, double setUp, double putAway)
    {
        var result = new CrewHours(setUp, putAway);
        foreach (var (keyNode, value) in hours.Children)
        {
            string key = ((YamlScalarNode)keyNode).Value!.Trim();
            var spans = Spans(value);
            if (char.IsAsciiDigit(key[0]))
            {
                result._byDate[WallMinutes.OfDate(key)] = spans;
                continue;
            }

            string[] ends = key.Split('-');
            int first = Weekday(ends[0]);
            if (ends.Length == 1)
            {
                result._byWeekday[first] = spans;
                continue;
            }

            for (int day = first; ; day = (day + 1) % 7)
            {
                result._byRange[day] = spans;
                if (day == Weekday(ends[1]))
                {
                    break;
                }
            }
        }

        return result;
    }

    public double SetUp => _setUp;

    /// <summary>The spans in which hands may work and that touch the time asked for, in order, those that meet joined.</summary>
    public ImmutableArray<Span> Touching(double from, double to)
    {
        var found = new List<Span>();
        for (double day = Math.Floor(from / WallMinutes.Day) * WallMinutes.Day - WallMinutes.Day; day <= to; day += WallMinutes.Day)
        {
            foreach (var span in OfDay(day))
            {
                var usable = new Span(day + span.Start + _setUp, day + span.End - _putAway);
                if (usable.Length > 0)
                {
                    found.Add(usable);
                }
            }
        }

        var joined = new List<Span>();
        foreach (var span in found.OrderBy(span => span.Start))
        {
            if (joined.Count > 0 && span.Start <= joined[^1].End)
            {
                joined[^1] = new Span(joined[^1].Start, Math.Max(joined[^1].End, span.End));
            }
            else
            {
                joined.Add(span);
            }
        }

        return [.. joined.Where(span => span.End >= from && span.Start <= to)];
    }

    /// <summary>The working part of the time asked for.</summary>
    public ImmutableArray<Span> Within(double from, double to) =>
        [.. Touching(from, to).Select(span => new Span(Math.Max(span.Start, from), Math.Min(span.End, to))).Where(span => span.Length > 0)];

    public Span? SpanHolding(double from, double to) =>
        Touching(from, to).FirstOrDefault(span => span.Holds(new Span(from, to)));

    private ImmutableArray<Span> OfDay(double day)
    {
        if (_byDate.TryGetValue(day, out var spans) || _byWeekday.TryGetValue(WallMinutes.WeekdayOf(day), out spans)
            || _byRange.TryGetValue(WallMinutes.WeekdayOf(day), out spans))
        {
            return spans;
        }

        return [];
    }

    private static ImmutableArray<Span> Spans(YamlNode node) => node switch
    {
        YamlSequenceNode list => [.. list.SelectMany(item => Spans(item))],
        YamlScalarNode scalar when Between().Match(scalar.Value!.Trim()) is { Success: true } match => [OneSpan(match)],
        _ => [],
    };

    private static Span OneSpan(Match match)
    {
        double start = Minute(match, "h1", "m1"), end = Minute(match, "h2", "m2");
        return new Span(start, end <= start ? end + WallMinutes.Day : end);
    }

    private static double Minute(Match match, string hour, string minute) =>
        60 * int.Parse(match.Groups[hour].Value, CultureInfo.InvariantCulture) + int.Parse(match.Groups[minute].Value, CultureInfo.InvariantCulture);

    private static int Weekday(string word) => Array.IndexOf(s_weekdays, word.Trim().ToLowerInvariant()[..3]);

    [GeneratedRegex(@"^(?<h1>\d{1,2}):(?<m1>\d{2})\s*[-–]\s*(?<h2>\d{1,2}):(?<m2>\d{2})$")]
    private static partial Regex Between();
}
