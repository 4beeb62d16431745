using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>Working hours of one date, one day of the week, or a range of days of the week.</summary>
public sealed record HoursEntry
{
    /// <summary>The date; null for days of the week.</summary>
    public LocalDate? Date { get; init; }

    /// <summary>First day of the week; null for a date.</summary>
    public IsoDayOfWeek? From { get; init; }

    /// <summary>Last day of the week, included, equal to <see cref="From"/> for one day; a range may wrap (Fri-Mon); null for a date.</summary>
    public IsoDayOfWeek? To { get; init; }

    /// <summary>Spans in order of their start; empty: no work (<c>none</c>).</summary>
    public ImmutableArray<HoursSpan> Spans { get; init; } = [];

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }

    /// <summary>Whether the entry speaks of a date, and how closely: 3 a date, 2 one day of the week, 1 a range, 0 not at all.</summary>
    /// <param name="date">A date.</param>
    public int RankOn(LocalDate date)
    {
        if (Date is { } own) return own == date ? 3 : 0;
        if (From is not { } from || To is not { } to) return 0;
        int length = ((int)to - (int)from + 7) % 7;
        int offset = ((int)date.DayOfWeek - (int)from + 7) % 7;
        if (offset > length) return 0;
        return from == to ? 2 : 1;
    }
}
