namespace CoatPlan.Scheduling;

/// <summary>One activity starts within one of several windows after another.</summary>
/// <remarks>
/// A link to or from an activity that is not done says nothing. A window whose earliest start passes its latest is void and the next is considered;
/// earlier windows are preferred where both would do.
/// </remarks>
/// <param name="From">The id of the activity from which the windows are counted.</param>
/// <param name="To">The id of the activity whose start they bound.</param>
/// <param name="Windows">One or more windows; the start must lie in at least one of them.</param>
public sealed record Link(string From, string To, ImmutableArray<Window> Windows)
{
    // What most links of most networks say.
    private static readonly ImmutableArray<Window> FromTheEnd = [new Window(Wait.FromEnd(0))];

    /// <summary>Ids of activities that windows ask for; where one of them is done, this link says nothing: tape that was taken off has no limit any more.</summary>
    public ImmutableArray<string> Unless { get; init; } = [];

    /// <summary>A link with one window that never closes.</summary>
    /// <param name="from">The id of the earlier activity.</param>
    /// <param name="to">The id of the later activity.</param>
    /// <param name="least">The earliest start of the later one.</param>
    public static Link After(string from, string to, Wait least) => new(from, to, [new Window(least)]);

    /// <summary>A link by which the later activity starts at or after the end of the earlier one.</summary>
    /// <param name="from">The id of the earlier activity.</param>
    /// <param name="to">The id of the later activity.</param>
    public static Link After(string from, string to) => new(from, to, FromTheEnd);
}
