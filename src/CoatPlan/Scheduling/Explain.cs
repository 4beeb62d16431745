namespace CoatPlan.Scheduling;

/// <summary>Blockages told in terms of the network.</summary>
internal static class Explain
{
    /// <summary>An activity that its own rules never let run at or after a minute.</summary>
    public static Blockage NeverFits(Frame frame, int activity, int from, int addedWork = 0)
    {
        var a = frame.Activities[activity];
        var earliest = Math.Max(from, a.Release);
        return new Blockage(a.Id, new Reason(OwnRule(frame, activity, earliest, addedWork)), earliest, frame.Horizon);
    }

    /// <summary>An activity all of whose windows after another close before it can start.</summary>
    public static Blockage MissedWindow(Frame frame, int activity, int link, int earliest)
    {
        var from = frame.Links[link].From;
        var reason = new Reason(ReasonKind.MostWait) { Link = link, Other = frame.IdOf(from) };
        return new Blockage(frame.IdOf(activity), reason, earliest, frame.Horizon);
    }

    /// <summary>An activity or hold that asks for more of a resource than there is.</summary>
    public static Blockage TooMuch(Frame frame, int activity, int resource)
    {
        var reason = new Reason(ReasonKind.Capacity) { Resource = frame.ResourceName(resource) };
        return new Blockage(frame.IdOf(activity), reason, frame.Activities[activity].Release, frame.Horizon);
    }

    /// <summary>Which of an activity's own rules leaves no place at or after a minute.</summary>
    private static ReasonKind OwnRule(Frame frame, int activity, int from, int addedWork)
    {
        var a = frame.Activities[activity];
        var work = a.Work + addedWork;
        if (from + (long)work > frame.Horizon)
        {
            return ReasonKind.Horizon;
        }

        if (a.NextStart is not null && (a.NextStart(from) is not { } start || start > frame.Horizon))
        {
            return ReasonKind.StartRule;
        }

        if (a.Hours is not null && work > 0 && (a.Hours.NextFit(from, work, a.Breakable) is not { } fit || fit.End > frame.Horizon))
        {
            return ReasonKind.Hours;
        }

        // Each rule alone leaves room; with hours and start rule together the start rule is the one that can be waited for.
        return a.NextStart is null ? ReasonKind.Horizon : ReasonKind.StartRule;
    }
}
