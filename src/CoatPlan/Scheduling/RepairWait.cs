namespace CoatPlan.Scheduling;

/// <summary>A wait, made ready for being asked thousands of times.</summary>
internal readonly struct RepairWait
{
    private readonly Remembered? moment;
    private readonly int minutes;
    private readonly bool isFromStart;

    public RepairWait(Wait wait)
    {
        moment = Remembered.Of(wait.Moment);
        minutes = wait.Minutes;
        isFromStart = wait.Anchor == Anchor.Start;
    }

    /// <summary>Minutes after its anchor where that is always the same; null where it depends on the minute.</summary>
    public int? Constant => moment is null ? minutes : null;

    public bool IsFromStart => isFromStart;

    public int After(in Placement from)
    {
        var anchor = isFromStart ? from.Start : from.End;
        return moment is null ? anchor + minutes : moment.At(anchor);
    }
}
