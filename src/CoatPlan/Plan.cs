using CoatPlan.Jobs;
using CoatPlan.Plans;

namespace CoatPlan;

/// <summary>
/// Everything CoatPlan says about a job: what to do and when, what to buy, what the air will hold, what to beware of. Screens, commands and sheets
/// show a plan and compute nothing of their own.
/// </summary>
/// <remarks>
/// A plan always exists once a job is read, even where the job cannot be done as asked: then <see cref="Reasons"/> says why, and the steps are the best plan
/// or the part that could be placed.
/// </remarks>
public sealed record Plan
{
    /// <summary>The job's name, as the person wrote it.</summary>
    public required string Job { get; init; }

    /// <summary>How quantities are printed; never how they are held.</summary>
    public PrintUnits Units { get; init; } = PrintUnits.Us;

    /// <summary>ISO 4217 code of the currency in which its prices are.</summary>
    public string Currency { get; init; } = JobDefaults.Currency;

    /// <summary>Local wall time before which nothing is planned.</summary>
    public required LocalDateTime Start { get; init; }

    /// <summary>End of the last step, refitting included; null where nothing could be placed.</summary>
    public LocalDateTime? Finish { get; init; }

    /// <summary>When the last film reaches service; null where a coat could not be placed.</summary>
    public LocalDateTime? InService { get; init; }

    /// <summary>The finish the person asked for; null where none was asked.</summary>
    public LocalDateTime? FinishBy { get; init; }

    /// <summary>Why there is no plan that meets what was asked; removing any one reason would help. Empty where the plan meets it.</summary>
    public ImmutableArray<string> Reasons { get; init; } = [];

    /// <summary>The reasons with the rules they speak of, and what leaving them out comes to; empty where the plan meets what was asked, in a quick plan, and where none was found.</summary>
    public ImmutableArray<PlanObstacle> Obstacles { get; init; } = [];

    /// <summary>Changes with which the job can be planned as asked, each of them tried; empty where the plan meets what was asked, and in a quick plan.</summary>
    public ImmutableArray<PlanWayOut> WaysOut { get; init; } = [];

    /// <summary>No plan can finish before this; null where nothing could be argued.</summary>
    public LocalDateTime? LowerBound { get; init; }

    /// <summary>The surfaces, in the job's order.</summary>
    public ImmutableArray<PlanSurface> Surfaces { get; init; } = [];

    /// <summary>The dated steps, by start, then by the order of the work.</summary>
    public ImmutableArray<PlanStep> Steps { get; init; } = [];

    /// <summary>The coatings to have, in the job's order of products.</summary>
    public ImmutableArray<PlanSupply> Supplies { get; init; } = [];

    /// <summary>Everything else to have, by item.</summary>
    public ImmutableArray<PlanConsumable> Consumables { get; init; } = [];

    /// <summary>The layers of each surface, in the job's order, then first to last.</summary>
    public ImmutableArray<PlanLayer> Layers { get; init; } = [];

    /// <summary>Cans that were weighed after a coat, in the order of the job's entries.</summary>
    public ImmutableArray<PlanWeighed> Weighed { get; init; } = [];

    /// <summary>What the air of the work place will hold.</summary>
    public required PlanAir Air { get; init; }

    /// <summary>What to breathe through.</summary>
    public required PlanRespirator Respirator { get; init; }

    /// <summary>What the person must be told for this job, most pressing first, the deferral last.</summary>
    public ImmutableArray<PlanCaution> Cautions { get; init; } = [];

    /// <summary>What is likely to go wrong with this job as asked, each with what to do instead.</summary>
    public ImmutableArray<PlanWarning> Warnings { get; init; } = [];

    /// <summary>What a customer would be asked to pay; null where the job names no labour price.</summary>
    public PlanQuote? Quote { get; init; }

    /// <summary>What has to be masked, by surface, for the masking sheet.</summary>
    public ImmutableArray<PlanMask> Masks { get; init; } = [];

    /// <summary>The labels as planned with, by product key, for the sheets.</summary>
    public ImmutableArray<PlanLabel> Labels { get; init; } = [];

    /// <summary>Why somebody has nothing to do, for every such stretch of the working hours from the start (or <c>as-of</c>) to the finish.</summary>
    public ImmutableArray<PlanIdle> Idle { get; init; } = [];

    /// <summary>The moments at which the whole job can stop for a week without rework, in order.</summary>
    public ImmutableArray<PlanRestPoint> RestPoints { get; init; } = [];

    /// <summary>When somebody may work, from the start to the finish, set-up and put-away included.</summary>
    public ImmutableArray<PlanSpan> OpenHours { get; init; } = [];

    /// <summary>The air of the work place hour by hour, from the start to the finish; empty where nothing could be placed.</summary>
    public ImmutableArray<PlanAirAt> AirHours { get; init; } = [];

    /// <summary>Whether every coat could be placed; where not, <see cref="Finish"/>, the air, the hours and the quote are those of the part that could.</summary>
    public bool IsWhole => InService is not null;

    /// <summary>How many stations of a class it has; 0 where one crew does it all.</summary>
    public int Stations => Steps.Max(step => step.Station) ?? 0;

    /// <summary>Whether the plan meets everything that was asked.</summary>
    public bool MeetsWhatWasAsked => Reasons.IsEmpty;
}
