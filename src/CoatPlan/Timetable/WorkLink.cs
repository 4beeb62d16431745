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
    /// <param name="window">Index of the window.</param>
    public WorkLink Settled(Link link, int window) =>
        ByWindow.IsEmpty
            ? this with { Link = link }
            : new WorkLink(link, ByWindow[Math.Max(0, window)].Stage, ByWindow[Math.Max(0, window)].LabelMinutes, Tape);
}
