using CoatPlan.Air;
using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Plans;
using CoatPlan.Presets;
using CoatPlan.Supplies;
using CoatPlan.Timetable;

namespace CoatPlan.Explanations;

/// <summary>Everything that a plan was worked out from and through, kept so that each of its figures can be explained.</summary>
public sealed record Workings
{
    /// <summary>What the person asked for.</summary>
    public required Job Job { get; init; }

    /// <summary>The labels of its products.</summary>
    public required Labels Labels { get; init; }

    /// <summary>What the trade knows.</summary>
    public required Catalogue Catalogue { get; init; }

    /// <summary>The measured surfaces.</summary>
    public required ImmutableArray<MeasuredSurface> Measured { get; init; }

    /// <summary>The coats at one station.</summary>
    public required Coats Coats { get; init; }

    /// <summary>The dated steps, in the plan's order.</summary>
    public required DatedJob Dated { get; init; }

    /// <summary>What is bought of paint.</summary>
    public required ImmutableArray<PaintSupply> Paint { get; init; }

    /// <summary>What is bought besides.</summary>
    public required ImmutableArray<ConsumableNeed> Besides { get; init; }

    /// <summary>What the air holds.</summary>
    public required AirReport AirReport { get; init; }

    /// <summary>The surfaces as the plan shows them.</summary>
    public required ImmutableArray<PlanSurface> Surfaces { get; init; }

    /// <summary>The steps as the plan shows them.</summary>
    public required ImmutableArray<PlanStep> Steps { get; init; }

    /// <summary>The coatings as the plan shows them.</summary>
    public required ImmutableArray<PlanSupply> Supplies { get; init; }

    /// <summary>The layers as the plan shows them.</summary>
    public required ImmutableArray<PlanLayer> Layers { get; init; }

    /// <summary>Weighed cans as the plan shows them.</summary>
    public required ImmutableArray<PlanWeighed> Weighed { get; init; }

    /// <summary>Consumables as the plan shows them.</summary>
    public required ImmutableArray<PlanConsumable> Consumables { get; init; }

    /// <summary>The air as the plan shows it.</summary>
    public required PlanAir Air { get; init; }

    /// <summary>The respirator as the plan shows it.</summary>
    public required PlanRespirator Respirator { get; init; }

    /// <summary>The quote as the plan shows it; null for none.</summary>
    public required PlanQuote? Quote { get; init; }
}
