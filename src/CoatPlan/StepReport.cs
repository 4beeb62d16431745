namespace CoatPlan;

/// <summary>What a person says of a step that is done.</summary>
public sealed record StepReport
{
    /// <summary>When it ended, local wall time.</summary>
    public required LocalDateTime Ended { get; init; }

    /// <summary>Hands-on time as a person writes it (<c>50 min</c>); null: as planned.</summary>
    public string? Took { get; init; }

    /// <summary>Cans it used, or the mass or volume left, as a person writes it (<c>1.5</c>); null: as planned.</summary>
    public string? Cans { get; init; }

    /// <summary>Free text; null: none.</summary>
    public string? Note { get; init; }

    /// <summary>The moment from which the rest is planned; null: the job's own stays.</summary>
    public LocalDateTime? AsOf { get; init; }
}
