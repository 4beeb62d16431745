namespace CoatPlan.Scheduling;

/// <summary>A moment that follows from when another activity ran: so many minutes after its start or end, or any function of that minute.</summary>
/// <remarks>"Dry to handle" is a function: how long it takes depends on how cold the night is that follows the coat.</remarks>
public sealed record Wait
{
    private Wait(Anchor anchor, int minutes, Func<int, int>? moment)
    {
        Anchor = anchor;
        Minutes = minutes;
        Moment = moment;
    }

    /// <summary>Which end of the earlier activity the wait is counted from.</summary>
    public Anchor Anchor { get; }

    /// <summary>Minutes after the anchor, negative for before it; 0 and without meaning where <see cref="Moment"/> is given.</summary>
    public int Minutes { get; }

    /// <summary>From the anchor's minute to the moment, never decreasing; null when the wait is constant.</summary>
    public Func<int, int>? Moment { get; }

    /// <summary>A constant wait counted from the start.</summary>
    /// <param name="minutes">Minutes of either sign.</param>
    public static Wait FromStart(int minutes) => new(Anchor.Start, minutes, null);

    /// <summary>A constant wait counted from the end.</summary>
    /// <param name="minutes">Minutes of either sign.</param>
    public static Wait FromEnd(int minutes) => new(Anchor.End, minutes, null);

    /// <summary>A moment that depends on the start.</summary>
    /// <param name="moment">From the start's minute to the moment; never decreasing.</param>
    public static Wait FromStart(Func<int, int> moment) => new(Anchor.Start, 0, moment);

    /// <summary>A moment that depends on the end.</summary>
    /// <param name="moment">From the end's minute to the moment; never decreasing.</param>
    public static Wait FromEnd(Func<int, int> moment) => new(Anchor.End, 0, moment);

    /// <summary>The moment that follows from a placement.</summary>
    /// <param name="from">When the earlier activity runs.</param>
    public int After(Placement from)
    {
        var anchor = Anchor == Anchor.Start ? from.Start : from.End;
        return Moment is null ? anchor + Minutes : Moment(anchor);
    }
}
