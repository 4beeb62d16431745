using System.Globalization;
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

    /// <summary>How many stations of a class it is done at: an entry of the job file speaks of all of them; null where the job has one crew.</summary>
    public int? Stations { get; init; }

    /// <summary>Titles of steps, with their station, that were not in the plan before, such as the rework of a missed window, in order.</summary>
    public ImmutableArray<string> Added { get; init; } = [];

    /// <summary>Titles of steps, with their station, that are not in the plan any more, in order.</summary>
    public ImmutableArray<string> Dropped { get; init; } = [];

    /// <summary>Minutes by which the finish is later, below 0 where it is earlier; null where one of the plans has none.</summary>
    public int? FinishMovesMin => FinishBefore is { } before && FinishAfter is { } after
        ? (int)Period.Between(before, after, PeriodUnits.Minutes).Minutes
        : null;

    /// <summary>What differs between two plans of one job, by what is done on which surfaces: steps that are done together or apart now are the same work.</summary>
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
            Stations = step.Station is null ? null : before.Stations,
            FinishBefore = before.Finish,
            FinishAfter = after.Finish,
            Meets = after.MeetsWhatWasAsked,
            Added = Missing(after, before),
            Dropped = Missing(before, after),
        };
    }

    private static ImmutableArray<string> Missing(Plan plan, Plan other)
    {
        var left = other.Steps.SelectMany(Parts).GroupBy(part => part).ToDictionary(same => same.Key, same => same.Count());
        var names = plan.Surfaces.ToDictionary(surface => surface.Id, surface => surface.Name, StringComparer.Ordinal);
        var missing = ImmutableArray.CreateBuilder<string>();
        foreach (var step in plan.Steps)
        {
            var parts = Parts(step).Where(part => !Take(left, part)).ToArray();
            if (parts.Length > 0)
                missing.Add(Said(step, parts.Length < step.Surfaces.Length ? [.. parts.Select(part => names.GetValueOrDefault(part.Surface, part.Surface))] : []));
        }

        return missing.ToImmutable();
    }

    // Done twice on a surface, it is there twice.
    private static bool Take(Dictionary<Part, int> left, Part part)
    {
        if (left.GetValueOrDefault(part) is not (> 0 and var many))
            return false;

        left[part] = many - 1;
        return true;
    }

    private static IEnumerable<Part> Parts(PlanStep step) =>
        step.Surfaces.DefaultIfEmpty("").Select(surface => new Part(step.Kind, step.Layer, step.Coat, step.Station, surface));

    private static string Said(PlanStep step, string[] only)
    {
        var where = step.Station is { } station ? string.Create(CultureInfo.InvariantCulture, $", station {station}") : "";
        return only.Length > 0 ? $"{step.Title}{where}, on {string.Join(" and ", only)}" : $"{step.Title}{where}";
    }

    // What a step does on one surface; on none of them where it is about the job as a whole.
    private readonly record struct Part(string Kind, int? Layer, int? Coat, int? Station, string Surface);
}
