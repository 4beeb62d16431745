using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>One day of the timeline, or a run of days on which nobody works.</summary>
/// <param name="Date">The day; the first of a run.</param>
/// <param name="Title">It in words.</param>
/// <param name="Open">When somebody may work, cut to the day.</param>
/// <param name="Lanes">What happens; empty where nobody works.</param>
/// <param name="Air">The air, for the curves, in °C.</param>
/// <param name="Ranges">Lowest and highest air, metal and dew point of the day, in words; empty with <paramref name="Air"/>.</param>
public sealed record TimelineDay(
    LocalDate Date,
    string Title,
    ImmutableArray<PlanSpan> Open,
    ImmutableArray<TimelineLane> Lanes,
    ImmutableArray<TimelineAir> Air,
    ImmutableArray<string> Ranges);
