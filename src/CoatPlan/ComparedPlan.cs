using CoatPlan.Plans;

namespace CoatPlan;

/// <summary>What one of two plans comes to, for setting it beside the other.</summary>
public sealed record ComparedPlan
{
    /// <summary>What the person calls it: the name of its file.</summary>
    public required string Name { get; init; }

    /// <summary>The job's name.</summary>
    public required string Job { get; init; }

    /// <summary>End of the last step; null where nothing could be placed.</summary>
    public LocalDateTime? Finish { get; init; }

    /// <summary>When the last film reaches service; null where a coat could not be placed.</summary>
    public LocalDateTime? InService { get; init; }

    /// <summary>Whether every coat could be placed.</summary>
    public bool IsWhole => InService is not null;

    /// <summary>Whether the plan meets everything that was asked.</summary>
    public required bool Meets { get; init; }

    /// <summary>Hands-on hours of all people.</summary>
    public required double HandsH { get; init; }

    /// <summary>Days on which somebody works.</summary>
    public required int Days { get; init; }

    /// <summary>Cans needed in all.</summary>
    public required int Cans { get; init; }

    /// <summary>Cans to buy.</summary>
    public required int Buy { get; init; }

    /// <summary>Price of what is bought; null where a product to buy has none.</summary>
    public decimal? Price { get; init; }

    /// <summary>What a customer would be asked to pay; null where the job names no labour price.</summary>
    public decimal? Quote { get; init; }

    /// <summary>ISO 4217 code of <see cref="Quote"/>; null without one.</summary>
    public string? Currency { get; init; }

    /// <summary>Highest Σ C/limit in the room, during any step; null where nothing is given off.</summary>
    public double? PeakMixtureRatio { get; init; }

    /// <summary>Highest Σ C/LEL in the room, during any step; null where nothing is given off.</summary>
    public double? PeakLelRatio { get; init; }

    /// <summary>The worst 8-hour average of Σ C/limit.</summary>
    public required double TwaMixtureRatio { get; init; }

    /// <summary>What to breathe through.</summary>
    public required string Respirator { get; init; }

    /// <summary>Codes of its warnings, each once, in order.</summary>
    public ImmutableArray<string> Warnings { get; init; } = [];

    /// <summary>Why there is no plan that meets what was asked.</summary>
    public ImmutableArray<string> Reasons { get; init; } = [];

    /// <summary>What a plan comes to.</summary>
    /// <param name="name">What the person calls it.</param>
    /// <param name="plan">The plan.</param>
    public static ComparedPlan Of(string name, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(plan);
        var toBuy = plan.Supplies.Where(supply => supply.Buy > 0).ToArray();
        return new ComparedPlan
        {
            Name = name,
            Job = plan.Job,
            Finish = plan.Finish,
            InService = plan.InService,
            Meets = plan.MeetsWhatWasAsked,
            HandsH = plan.Steps.Sum(step => step.HandsMin * step.People) / 60,
            Days = plan.Steps.SelectMany(DaysOf).Distinct().Count(),
            Cans = plan.Supplies.Sum(supply => supply.Cans),
            Buy = toBuy.Sum(supply => supply.Buy),
            Price = toBuy.Any(supply => supply.Price is null) ? null : toBuy.Sum(supply => supply.Price!.Value),
            Quote = plan.Quote?.Total,
            Currency = plan.Quote?.Currency,
            PeakMixtureRatio = plan.Air.ByStep.IsEmpty ? null : plan.Air.ByStep.Max(step => step.MixtureRatio),
            PeakLelRatio = plan.Air.ByStep.IsEmpty ? null : plan.Air.ByStep.Max(step => step.LelRatio),
            TwaMixtureRatio = plan.Air.TwaMixtureRatio,
            Respirator = plan.Respirator.Kind,
            Warnings = [.. plan.Warnings.Select(warning => warning.Code).Distinct().Order(StringComparer.Ordinal)],
            Reasons = plan.Reasons,
        };
    }

    private static IEnumerable<LocalDate> DaysOf(PlanStep step) => step.Start.Date == step.End.Date ? [step.Start.Date] : [step.Start.Date, step.End.Date];
}
