namespace CoatPlan.Plans;

/// <summary>What the air of the work place will hold, in a well-mixed room.</summary>
/// <remarks>The well-mixed room understates what the person spraying breathes and the heavy vapour at the floor.</remarks>
public sealed record PlanAir
{
    /// <summary>Volume of the room, m³; null outdoors.</summary>
    public double? RoomM3 { get; init; }

    /// <summary>Exhaust to outdoors, m³/min.</summary>
    public required double ExhaustM3PerMin { get; init; }

    /// <summary>Mixing factor K, from 1 (perfect) to 10.</summary>
    public required double Mixing { get; init; }

    /// <summary>What each step with vapour does to the air.</summary>
    public ImmutableArray<PlanAirStep> ByStep { get; init; } = [];

    /// <summary>The worst 8-hour average of Σ C/limit.</summary>
    public required double TwaMixtureRatio { get; init; }

    /// <summary>Exhaust that keeps Σ C/limit under 1, m³/min; null where none can be named.</summary>
    public double? ExhaustForLimitM3PerMin { get; init; }

    /// <summary>Exhaust that keeps vapour under 10 % of the lower explosive limit, m³/min; null where none can be named.</summary>
    public double? ExhaustForLelM3PerMin { get; init; }

    /// <summary>The textbook's dilution figure for the heaviest coat, m³/min; null outdoors and without vapour.</summary>
    public double? DilutionForLimitM3PerMin { get; init; }

    /// <summary>The same for 10 % of the lower explosive limit, m³/min; null outdoors and without vapour.</summary>
    public double? DilutionForLelM3PerMin { get; init; }

    /// <summary>Each solvent over the whole plan, by name.</summary>
    public ImmutableArray<PlanExposure> BySolvent { get; init; } = [];

    /// <summary>What would bring each limit that is passed under, the most pressing first.</summary>
    public ImmutableArray<PlanMend> Mends { get; init; } = [];

    /// <summary>What the sums rest on and what they leave out, a sentence each.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
