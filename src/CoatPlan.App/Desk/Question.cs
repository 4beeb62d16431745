namespace CoatPlan.App.Desk;

/// <summary>A question that must be answered before the work goes on; leaving it means none of the answers.</summary>
/// <param name="Asks">The question.</param>
/// <param name="Answers">The answers, at least one.</param>
internal sealed record Question(string Asks, ImmutableArray<Answer> Answers)
{
    /// <summary>The answer that the keys act on, from 0.</summary>
    public int At { get; set; }
}
