using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using CoatPlan.Plans;
using CoatPlan.Sheets.Content;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace CoatPlan.Sheets.Calendar;

/// <summary>
/// A plan as a calendar that phones import: an event a step, and an alarm before each coat's window closes. Source: RFC 5545.
/// </summary>
/// <remarks>A wait is no event. An event is known by the job's name and its step, so a plan that is imported anew moves its events and doubles none.</remarks>
public static class PlanCalendar
{
    /// <summary>How long before the last start inside a coat's windows the alarm sounds, minutes: time to put on gloves and mask and to shake a can.</summary>
    public const int AlarmLeadMinutes = 30;

    private const int HexDigits = 16;

    /// <summary>Writes the calendar in local wall times, lines ended as the standard asks; null where nothing could be placed.</summary>
    /// <param name="plan">The plan.</param>
    public static string? Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Steps.IsEmpty)
            return null;

        var calendar = new Ical.Net.Calendar { ProductId = "-//CoatPlan//CoatPlan//EN", Method = "PUBLISH" };
        calendar.AddProperty("X-WR-CALNAME", PlainText.Of(plan.Job));
        var words = new PlanWords(plan);
        foreach (var step in plan.Steps)
            calendar.Events.Add(Event(step, plan, words));
        return CalendarLines.Fold(new CalendarSerializer(calendar).SerializeToString() ?? "");
    }

    /// <summary>The name that an event keeps for good.</summary>
    /// <param name="job">The job's name.</param>
    /// <param name="step">The step's id.</param>
    internal static string Uid(string job, string step)
    {
        // A step that is called after something no calendar may hold stays one of its own.
        return $"{(PlainText.Of(step) == step ? step : Digest(step))}.{Digest(job)}@coatplan";
    }

    private static string Digest(string name) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(name)))[..HexDigits];

    private static CalendarEvent Event(PlanStep step, Plan plan, PlanWords words)
    {
        var content = WorkSheet.StepOf(step, plan, words);
        var made = new CalendarEvent
        {
            Uid = Uid(plan.Job, step.Id),
            // No clock is asked: the same job gives the same bytes. The standard wants this one time in UTC.
            DtStamp = Time(plan.Start, CalDateTime.UtcTzId),
            Start = Time(step.Start, null),
            End = step.End > step.Start ? Time(step.End, null) : null,
            Summary = PlainText.Of(content.Title),
            Description = Description(content),
        };
        if (step is { LastSafeStart: { } last, Done: false })
            made.Alarms.Add(Alarm(content.Title, step.Start, last));
        return made;
    }

    private static string Description(WorkStep content)
    {
        var lines = content.Details.Concat(content.Readings.Select(reading => $"Check {reading}."));
        return string.Join('\n', (content.Where.Length > 0 ? lines.Prepend(content.Where) : lines).Select(PlainText.Of));
    }

    private static Alarm Alarm(string title, LocalDateTime start, LocalDateTime last)
    {
        var minutes = (int)NodaTime.Period.Between(start, last, PeriodUnits.Minutes).Minutes - AlarmLeadMinutes;
        return new Alarm
        {
            Action = AlarmAction.Display,
            Description = PlainText.Of(string.Create(CultureInfo.InvariantCulture, $"{title}: last start inside its windows {PlanWords.Moment(last)}")),
            // From the event's start: an alarm at a moment would need UTC, and a plan knows the wall clock alone.
            Trigger = new Trigger(Ical.Net.DataTypes.Duration.FromMinutes(minutes)),
        };
    }

    private static CalDateTime Time(LocalDateTime time, string? zone) => new(time.Year, time.Month, time.Day, time.Hour, time.Minute, time.Second, zone);
}
