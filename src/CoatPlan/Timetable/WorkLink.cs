using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>A link of the network with what is waited for.</summary>
/// <param name="Link">The link as the scheduling room sees it.</param>
/// <param name="Stage">What is waited for.</param>
/// <param name="LabelMinutes">The label's time at the label's own conditions; null where no label speaks.</param>
/// <param name="Tape">Whether it holds the time tape stays on.</param>
internal sealed record WorkLink(Link Link, FilmStage Stage, double? LabelMinutes, bool Tape = false)
{
    /// <summary>For a link with several windows, what is waited for in each; empty for others.</summary>
    public ImmutableArray<WaitInWindow> ByWindow { get; init; } = [];

    /// <summary>The link where one of its windows is used.</summary>
    /// <param name="link">The link with that window alone.</param>
    /// <param name="window">Index of the window; −1 where two facts missed them all.</param>
    public WorkLink Settled(Link link, int window)
    {
        if (ByWindow.IsEmpty)
            return ReferenceEquals(link, Link) ? this : this with { Link = link };

        var used = ByWindow[Math.Max(0, window)];
        return new WorkLink(link with { Windows = [used.OfLabel] }, used.Stage, used.LabelMinutes, Tape);
    }
}
