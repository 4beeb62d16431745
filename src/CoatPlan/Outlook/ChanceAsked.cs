using CoatPlan.Timetable;

namespace CoatPlan.Outlook;

/// <summary>How a chance is asked for.</summary>
public sealed record ChanceAsked
{
    /// <summary>How many draws where nobody says otherwise.</summary>
    public const int UsualDraws = 10_000;

    /// <summary>Most draws.</summary>
    public const int MostDraws = 1_000_000;

    /// <summary>How many draws, from 1 to <see cref="MostDraws"/>.</summary>
    public int Draws { get; init; } = UsualDraws;

    /// <summary>How many draws each thing that could be bought is tried in; 0: nothing is tried.</summary>
    public int BuyDraws { get; init; } = 2_000;

    /// <summary>How far the plan that is carried out is searched for.</summary>
    public SearchDepth Depth { get; init; } = SearchDepth.Full;

    /// <summary>How far things may be from the plan; null: the trade's own spreads.</summary>
    public ChanceSpreads? Spreads { get; init; }

    /// <summary>How many threads at most, as many as there are cores is best; −1: as many as the thread pool gives, which may be more. The answer is the same with any number.</summary>
    public int Threads { get; init; } = -1;
}
