namespace CoatPlan.Sheets.Content;

/// <summary>What happens on one day with what is sprayed together, or with the whole job.</summary>
/// <param name="Title">Its surfaces, with the stations that do the same at the same time.</param>
/// <param name="Bars">Its stretches, by start.</param>
public sealed record TimelineLane(string Title, ImmutableArray<TimelineBar> Bars);
