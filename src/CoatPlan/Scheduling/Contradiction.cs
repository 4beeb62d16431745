namespace CoatPlan.Scheduling;

/// <summary>Demands and waits that no schedule can meet, whatever the calendars.</summary>
internal static class Contradiction
{
    /// <summary>The first one found; null when there is none.</summary>
    public static Blockage? In(Frame frame)
    {
        for (var i = 0; i < frame.Count; i++)
        {
            if (!frame.IsFixed[i] && frame.AskedBy[i] < 0 && TooMuch(frame, i) is { } resource)
            {
                return Explain.TooMuch(frame, i, resource);
            }
        }

        return ConstantArc.OnContradiction(frame.Count, ConstantArc.Of(frame)) is { } activity
            ? new Blockage(frame.IdOf(activity), new Reason(ReasonKind.Contradiction), frame.Activities[activity].Release, frame.Horizon)
            : null;
    }

    private static int? TooMuch(Frame frame, int activity)
    {
        if (frame.Work[activity] > 0)
        {
            foreach (var demand in frame.Demands[activity])
            {
                if (demand.Amount > frame.Capacity[demand.Resource])
                {
                    return demand.Resource;
                }
            }
        }

        foreach (var h in frame.HoldsFrom[activity])
        {
            var hold = frame.Holds[h];
            var own = frame.Work[activity] > 0 ? frame.OwnUse(activity, h) : 0;
            if (hold.Amount + own > frame.Capacity[hold.Resource] && (frame.Work[activity] > 0 || hold.Amount > frame.Capacity[hold.Resource]))
            {
                return hold.Resource;
            }
        }

        return null;
    }
}
