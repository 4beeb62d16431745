using CoatPlan.Cautions;
using CoatPlan.Plans;

namespace CoatPlan.Composition;

/// <summary>Cautions as the plan shows them.</summary>
internal static class PlanCautions
{
    public static ImmutableArray<PlanCaution> Of(ImmutableArray<Caution> cautions) =>
        [.. cautions.Select(caution => new PlanCaution(caution.Code, caution.Text, caution.Source))];
}
