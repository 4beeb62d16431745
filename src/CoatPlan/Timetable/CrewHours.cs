using CoatPlan.Jobs;
using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>The crew's working spans as openings on the clock, set-up and put-away taken off.</summary>
internal static class CrewHours
{
    /// <summary>When hands-on work can go on, from the job's start to the horizon.</summary>
    /// <remarks>
    /// A span in which the job starts is set up from there, not from the span's beginning: nothing is planned before the start. A span no longer than
    /// set-up and put-away together leaves no time to work.
    /// </remarks>
    public static OpenHours Of(Crew crew, Clock clock) =>
        OpenHours.Of(Spans(crew, clock)
            .Select(span => new Opening(
                Math.Max(span.From, 0) + (int)Math.Ceiling(crew.SetUp.TotalMinutes),
                span.To - (int)Math.Ceiling(crew.PutAway.TotalMinutes)))
            .Where(opening => opening.Opens < opening.Closes));

    /// <summary>The spans themselves, in minutes, those that ended before the start left out.</summary>
    public static IEnumerable<(int From, int To)> Spans(Crew crew, Clock clock)
    {
        // A span of the day before may run past midnight into the first day.
        for (var day = -1; day <= Clock.HorizonDays; day++)
        {
            var date = clock.Origin.Date.PlusDays(day);
            foreach (var span in WorkingHours.On(crew.Hours, date))
            {
                var (start, end) = span.On(date);
                var from = clock.MinuteAtOrAfter(start);
                var to = Math.Min(clock.MinuteAtOrAfter(end), Clock.Horizon);
                if (to > 0 && from < to)
                    yield return (from, to);
            }
        }
    }
}
