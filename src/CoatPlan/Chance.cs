using CoatPlan.Outlook;

namespace CoatPlan;

/// <summary>What may become of a plan: hands, drying and weather drawn anew many times, the plan carried out in each draw.</summary>
public sealed record Chance
{
    /// <summary>How many draws.</summary>
    public required int Draws { get; init; }

    /// <summary>The plan's own finish.</summary>
    public required LocalDateTime Planned { get; init; }

    /// <summary>The share of draws that finish by the job's <c>finish-by</c>; null where none was asked.</summary>
    public double? Meets { get; init; }

    /// <summary>Half of the draws finish by then; null: half of them do not finish within 60 days.</summary>
    public LocalDateTime? Finish50 { get; init; }

    /// <summary>Nine of ten draws finish by then; null: fewer finish within 60 days.</summary>
    public LocalDateTime? Finish90 { get; init; }

    /// <summary>For each product, the share of draws that a number of cans covers.</summary>
    public ImmutableArray<ChanceCans> Cans { get; init; } = [];

    /// <summary>What costs the most that goes otherwise than planned, dearest first.</summary>
    public ImmutableArray<ChanceCost> Costly { get; init; } = [];

    /// <summary>What another hour, helper or heater would make of it.</summary>
    public ImmutableArray<ChanceBuy> Buys { get; init; } = [];

    /// <summary>What the draws that <see cref="Buys"/> were tried with come to with nothing more; null: none were tried.</summary>
    public ChanceBuy? Unbought { get; init; }

    /// <summary>Those of <see cref="Buys"/> with which more of the same draws are in time, or half of them finish earlier.</summary>
    public ImmutableArray<ChanceBuy> Helping => [.. Buys.Where(Helps)];

    /// <summary>The others: they were tried and change nothing for the better.</summary>
    public ImmutableArray<ChanceBuy> Idle => [.. Buys.Where(buy => !Helps(buy))];

    private bool Helps(ChanceBuy buy) =>
        buy.Meets > Unbought?.Meets || (buy.Finish50 is { } finish && (Unbought?.Finish50 is not { } known || finish < known));
}
