using System.Text;
using System.Text.RegularExpressions;

namespace CoatPlan.Tests.Sheets;

/// <summary>A reader of calendars after RFC 5545 that shares nothing with what writes them.</summary>
internal sealed class ReadCalendar
{
    private const int LongestLine = 75;

    /// <summary>The properties outside of events.</summary>
    public Dictionary<string, string> Head { get; } = [];

    /// <summary>The events, top to bottom.</summary>
    public List<ReadEvent> Events { get; } = [];

    /// <summary>Reads a calendar; fails the test where it breaks the standard.</summary>
    /// <param name="text">The calendar.</param>
    public static ReadCalendar Of(string text)
    {
        text.ShouldEndWith("\r\n");
        text.Replace("\r\n", "").Where(char.IsControl).ShouldBeEmpty();
        foreach (var line in text.Split("\r\n"))
            Encoding.UTF8.GetByteCount(line).ShouldBeLessThanOrEqualTo(LongestLine, line);

        var read = new ReadCalendar();
        var open = new Stack<string>();
        foreach (var line in text.Replace("\r\n ", "").Split("\r\n", StringSplitOptions.RemoveEmptyEntries))
        {
            var (name, value) = Property(line);
            if (name == "BEGIN")
                read.Begin(value, open);
            else if (name == "END")
                open.Pop().ShouldBe(value);
            else
                read.In(open).Add(name, value);
        }

        open.ShouldBeEmpty();
        return read;
    }

    private static (string Name, string Value) Property(string line)
    {
        var match = Regex.Match(line, """^([A-Z-]+(?:;[A-Z-]+=(?:"[^"]*"|[^";:,]*))*):(.*)$""");
        match.Success.ShouldBeTrue(line);
        return (match.Groups[1].Value, Regex.Replace(match.Groups[2].Value, @"\\([\\;,nN])", found => found.Groups[1].Value is "n" or "N" ? "\n" : found.Groups[1].Value));
    }

    private void Begin(string name, Stack<string> open)
    {
        open.FirstOrDefault().ShouldBe(name switch { "VCALENDAR" => null, "VEVENT" => "VCALENDAR", "VALARM" => "VEVENT", _ => "no such part" });
        if (name == "VEVENT")
            Events.Add(new ReadEvent());
        if (name == "VALARM")
            Events[^1].Alarms.Add([]);
        open.Push(name);
    }

    private Dictionary<string, string> In(Stack<string> open) => open.Peek() switch
    {
        "VEVENT" => Events[^1].Properties,
        "VALARM" => Events[^1].Alarms[^1],
        _ => Head,
    };
}
