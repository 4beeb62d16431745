using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>A draft's network with less asked of it, for a bound that no plan of its batches can beat.</summary>
internal static class Relaxation
{
    /// <summary>
    /// Each gap may be passed in any of its label's windows, nothing closes, no tape has a limit, and the clean-ups that rests and missed windows ask are
    /// left out.
    /// </summary>
    public static Network Of(Draft draft, Workplace place)
    {
        var drawn = NetworkDrawing.Draw(draft, place);
        return drawn.Network with { Links = [.. drawn.Links.Select(Relaxed)] };
    }

    private static Link Relaxed(WorkLink link) =>
        link.Link with { Windows = [.. link.Link.Windows.Select(window => window with { Most = null })] };
}
