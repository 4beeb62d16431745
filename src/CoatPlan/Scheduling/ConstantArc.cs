namespace CoatPlan.Scheduling;

/// <summary>One start is at least so many minutes, of either sign, after another.</summary>
internal readonly record struct ConstantArc(int From, int To, int Minutes, int Link)
{
    /// <summary>What the links say by constants alone, whichever window is used: a relaxation of the network.</summary>
    public static List<ConstantArc> Of(Frame frame)
    {
        var arcs = new List<ConstantArc>();
        for (var l = 0; l < frame.Links.Length; l++)
        {
            var link = frame.Links[l];
            if (frame.IsFixed[link.To] || frame.IsFixed[link.From] || !frame.AlwaysSpeaks(link))
            {
                continue;
            }

            if (link.ConstantLag(frame.Work) is { } least)
            {
                arcs.Add(new ConstantArc(link.From, link.To, least, l));
            }

            if (ConstantMost(frame, link) is { } most)
            {
                arcs.Add(new ConstantArc(link.To, link.From, -most, l));
            }
        }

        return arcs;
    }

    /// <summary>An activity on a cycle of arcs that add up to more than nothing, so that no starts satisfy them; null when there is none.</summary>
    public static int? OnContradiction(int count, List<ConstantArc> arcs)
    {
        var longest = new long[count];
        for (var round = 0; round <= count; round++)
        {
            int? raised = null;
            foreach (var arc in arcs)
            {
                if (longest[arc.From] + arc.Minutes > longest[arc.To])
                {
                    longest[arc.To] = longest[arc.From] + arc.Minutes;
                    raised = arc.To;
                }
            }

            if (raised is null)
            {
                return null;
            }

            if (round == count)
            {
                return raised;
            }
        }

        return null;
    }

    private static int? ConstantMost(Frame frame, FrameLink link)
    {
        var from = frame.Activities[link.From];
        var lengthIsKnown = (!from.Breakable || from.Hours is null) && frame.Incoming[link.From].All(l => frame.Links[l].Windows.All(w => w.AddedWork == 0));
        int? most = null;
        foreach (var window in link.Windows)
        {
            if (window.Most is not { Moment: null } wait || (wait.Anchor == Anchor.End && !lengthIsKnown))
            {
                return null;
            }

            var here = wait.Minutes + (wait.Anchor == Anchor.End ? frame.Work[link.From] : 0);
            most = most is null ? here : Math.Max(most.Value, here);
        }

        return most;
    }
}
