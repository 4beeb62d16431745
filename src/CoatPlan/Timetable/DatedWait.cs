namespace CoatPlan.Timetable;

/// <summary>A wait of a dated step.</summary>
/// <param name="Step">Id of the earlier step.</param>
/// <param name="Stage">What is waited for.</param>
/// <param name="LabelMinutes">The label's time at the label's own conditions; null where no label speaks.</param>
/// <param name="LeastMinutes">From the earlier step's end, in the plan's own conditions, rounded up; null for none.</param>
/// <param name="MostMinutes">From the earlier step's start, rounded down; null where it stays open.</param>
public sealed record DatedWait(string Step, FilmStage Stage, double? LabelMinutes, double? LeastMinutes, double? MostMinutes);
