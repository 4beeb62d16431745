using CoatPlan.Plans;
using CoatPlan.Prep;

namespace CoatPlan.Composition;

/// <summary>Warnings as the plan shows them, each told once.</summary>
internal static class PlanWarnings
{
    public static ImmutableArray<PlanWarning> Of(ImmutableArray<Warning> warnings) =>
        [.. warnings.Select(warning => new PlanWarning(warning.Code, warning.Surface, warning.Product, warning.Text)).Distinct()];
}
