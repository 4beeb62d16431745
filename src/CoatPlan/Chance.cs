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
}
