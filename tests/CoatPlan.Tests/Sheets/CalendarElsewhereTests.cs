using CoatPlan.Sheets.Calendar;
using CoatPlan.Tests.Commands;

namespace CoatPlan.Tests.Sheets;

/// <summary>The calendar as a library reads it that shares no code with the one that wrote it, where that is there.</summary>
public class CalendarElsewhereTests
{
    private const string Python = "/usr/bin/python3";

    private const string Reader = """
        import sys, datetime, icalendar
        book = {}
        for name in sys.argv[1:]:
            for event in icalendar.Calendar.from_ical(open(name, 'rb').read()).walk('VEVENT'):
                book[str(event['UID'])] = event
        for event in sorted(book.values(), key=lambda event: str(event['UID'])):
            start, end = event['DTSTART'].dt, event['DTEND'].dt
            assert start.tzinfo is None and end.tzinfo is None
            alarms = [alarm['TRIGGER'].dt for alarm in event.walk('VALARM')]
            print(str(event['UID']).split('.' + str(event['UID']).split('.')[-1])[0], start.strftime('%Y-%m-%dT%H:%M'), end.strftime('%Y-%m-%dT%H:%M'), *[(start + alarm).strftime('%Y-%m-%dT%H:%M') for alarm in alarms], sep='|')
        """;

    [Fact]
    public void Another_library_reads_every_step_with_its_alarm_and_a_second_import_doubles_none()
    {
        Assert.SkipUnless(IsThere(), "python3 with icalendar is not here");
        var plan = SheetSamples.Roadster();
        using var folder = new TempFolder();
        folder.File("read.py", Reader);
        folder.File("first.ics", PlanCalendar.Write(plan)!);
        folder.File("second.ics", PlanCalendar.Write(plan with { Steps = [.. plan.Steps.Select(step => step with { Title = step.Title + "!" })] })!);

        var read = OtherProgram.Run(folder.Path, Python, "read.py", "first.ics", "second.ics").Split('\n', StringSplitOptions.RemoveEmptyEntries);

        read.ShouldBe(plan.Steps.Select(step => string.Join('|', [step.Id, Time(step.Start), Time(step.End), .. Alarm(step.LastSafeStart)])), ignoreOrder: true);
    }

    private static string[] Alarm(LocalDateTime? last) => last is { } time ? [Time(time.PlusMinutes(-PlanCalendar.AlarmLeadMinutes))] : [];

    private static string Time(LocalDateTime time) => time.ToString("uuuu-MM-dd'T'HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    private static bool IsThere()
    {
        if (!OtherProgram.IsThere(Python))
            return false;

        using var folder = new TempFolder();
        return OtherProgram.Run(folder.Path, Python, "-c", "import importlib.util; print(importlib.util.find_spec('icalendar') is not None)").Trim() == "True";
    }
}
