using CoatPlan.Plans;

namespace CoatPlan.App.Desk;

/// <content>The station of a class whose steps the sequence lists.</content>
internal sealed partial class JobDesk
{
    /// <summary>The station whose steps the sequence lists, from 1; null for all of them.</summary>
    public int? StationAt { get; private set; }

    /// <summary>How many stations the plan has; 0 where it has one crew.</summary>
    public int Stations => Plan?.Stations ?? 0;

    /// <summary>Whether the sequence lists a step.</summary>
    /// <param name="step">A step of the plan.</param>
    public bool Lists(PlanStep step) => StationAt is null || step.Station is null || step.Station == StationAt;

    private void ChooseStation(Word word)
    {
        if (Stations == 0)
        {
            Message = "one crew does it all: there are no stations to choose from";
            return;
        }

        var at = RowChoice.Moved(StationAt ?? 0, word == Word.Left ? Word.Up : Word.Down, Stations + 1);
        StationAt = at > 0 ? at : null;
        var listed = StepsListed();
        StepAt = listed.FirstOrDefault(step => step >= StepAt, listed[^1]);
    }

    private void MoveAmongSteps(Word word)
    {
        var listed = StepsListed();
        if (listed.Length > 0)
            StepAt = listed[RowChoice.Moved(Math.Max(0, listed.IndexOf(StepAt)), word, listed.Length)];
    }

    // A step of another station may be chosen elsewhere, and stations may be taken away: what is chosen is always listed.
    private void KeepStationInside()
    {
        if (Step is { } step && !Lists(step))
            StationAt = step.Station;
        if (StationAt > Stations)
            StationAt = null;
    }

    private ImmutableArray<int> StepsListed() =>
        Plan is { } plan ? [.. Enumerable.Range(0, plan.Steps.Length).Where(at => Lists(plan.Steps[at]))] : [];
}
