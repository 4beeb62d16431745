using CoatPlan.Plans;

namespace CoatPlan;

/// <summary>What a step that was done moved in the plan.</summary>
public sealed record PlanChange
{
    /// <summary>Id of the step.</summary>
    public required string Step { get; init; }

    /// <summary>What a person would call it.</summary>
    public required string Title { get; init; }

    /// <summary>When the plan was to finish; null where nothing could be placed.</summary>
    public LocalDateTime? FinishBefore { get; init; }

    /// <summary>When it finishes now; null where nothing can be placed.</summary>
    public LocalDateTime? FinishAfter { get; init; }

    /// <summary>Whether the plan meets everything that was asked now.</summary>
    public required bool Meets { get; init; }

    /// <summary>Titles of steps that were not in the plan before, such as the rework of a missed window, in order.</summary>
    public ImmutableArray<string> Added { get; init; } = [];

    /// <summary>Titles of steps that are not in the plan any more, in order.</summary>
    public ImmutableArray<string> Dropped { get; init; } = [];

    /// <summary>Minutes by which the finish is later, below 0 where it is earlier; null where one of the plans has none.</summary>
    public int? FinishMovesMin => FinishBefore is { } before && FinishAfter is { } after
        ? (int)Period.Between(before, after, PeriodUnits.Minutes).Minutes
        : null;

    /// <summary>What differs between two plans of one job, by the ids of their steps.</summary>
    /// <param name="step">The step that was done between them.</param>
    /// <param name="before">The plan before.</param>
    /// <param name="after">The plan after.</param>
    public static PlanChange Between(PlanStep step, Plan before, Plan after)
    {
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return new PlanChange
        {
            Step = step.Id,
            Title = step.Title,
            FinishBefore = before.Finish,
            FinishAfter = after.Finish,
            Meets = after.MeetsWhatWasAsked,
            Added = Missing(after, before),
            Dropped = Missing(before, after),
        };
    }

    private static ImmutableArray<string> Missing(Plan plan, Plan other)
    {
        var known = other.Steps.Select(step => step.Id).ToHashSet(StringComparer.Ordinal);
        return [.. plan.Steps.Where(step => !known.Contains(step.Id)).Select(step => step.Title)];
    }
}
