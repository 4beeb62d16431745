namespace CoatPlan.Jobs;

/// <summary>Which spans of work begin on a date.</summary>
public static class WorkingHours
{
    /// <summary>The spans that begin on a date: a date beats a day of the week, a day beats a range; nothing said is no work.</summary>
    /// <param name="hours">The entries of a crew.</param>
    /// <param name="date">A date.</param>
    /// <returns>Spans in order of their start; empty: no work begins on that date.</returns>
    public static ImmutableArray<HoursSpan> On(ImmutableArray<HoursEntry> hours, LocalDate date)
    {
        int rank = 0;
        ImmutableArray<HoursSpan> spans = [];
        foreach (var entry in hours)
        {
            int own = entry.RankOn(date);
            if (own <= rank) continue;
            rank = own;
            spans = entry.Spans;
        }

        return spans;
    }
}
