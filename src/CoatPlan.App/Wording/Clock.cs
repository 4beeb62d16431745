using System.Globalization;
using NodaTime.Text;

namespace CoatPlan.App.Wording;

/// <summary>Local wall times as a person reads them, in English whatever the machine's culture.</summary>
public static class Clock
{
    private static readonly LocalTimePattern TimePattern = LocalTimePattern.Create("HH:mm", CultureInfo.InvariantCulture);

    private static readonly LocalDatePattern LongDay = LocalDatePattern.Create("dddd d MMMM uuuu", CultureInfo.InvariantCulture);

    private static readonly LocalDatePattern ShortDay = LocalDatePattern.Create("ddd d MMM", CultureInfo.InvariantCulture);

    private static readonly LocalDateTimePattern Weekday = LocalDateTimePattern.Create("ddd HH:mm", CultureInfo.InvariantCulture);

    private static readonly LocalDateTimePattern Both = LocalDateTimePattern.Create("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The time of day: <c>14:20</c>.</summary>
    /// <param name="at">The moment.</param>
    public static string Time(LocalDateTime at) => TimePattern.Format(at.TimeOfDay);

    /// <summary>The day in full: <c>Friday 14 May 2027</c>.</summary>
    /// <param name="day">The day.</param>
    public static string Day(LocalDate day) => LongDay.Format(day);

    /// <summary>The day in short: <c>Fri 14 May</c>.</summary>
    /// <param name="day">The day.</param>
    public static string BriefDay(LocalDate day) => ShortDay.Format(day);

    /// <summary>Day and time: <c>Fri 14 May 14:20</c>.</summary>
    /// <param name="at">The moment.</param>
    public static string Moment(LocalDateTime at) => Both.Format(at);

    /// <summary>Weekday and time: <c>Fri 14:20</c>.</summary>
    /// <param name="at">The moment.</param>
    public static string DayAndTime(LocalDateTime at) => Weekday.Format(at);

    /// <summary>The time alone where the day is known, day and time elsewhere.</summary>
    /// <param name="at">The moment.</param>
    /// <param name="known">The day that the reader has before them.</param>
    public static string MomentSeenFrom(LocalDateTime at, LocalDate known) => at.Date == known ? Time(at) : Moment(at);

    /// <summary>A stretch within a day: <c>08:00-12:00</c>; its end carries the day where that is another one.</summary>
    /// <param name="from">Its start.</param>
    /// <param name="to">Its end.</param>
    public static string Span(LocalDateTime from, LocalDateTime to) =>
        from.Date == to.Date ? $"{Time(from)}-{Time(to)}" : $"{Time(from)}-{Moment(to)}";
}
