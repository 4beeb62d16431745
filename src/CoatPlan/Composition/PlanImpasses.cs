using CoatPlan.Obstacles;
using CoatPlan.Plans;

namespace CoatPlan.Composition;

/// <summary>What stands in a job's way, and the ways out, as the plan shows them.</summary>
internal static class PlanImpasses
{
    public static ImmutableArray<PlanObstacle> Obstacles(Impasse? impasse) =>
    [
        .. (impasse?.Obstacles ?? []).Select(obstacle => new PlanObstacle(
            [.. obstacle.Rules.Select(rule => new PlanRule(rule.Code, rule.Product))], obstacle.What, obstacle.Finish)),
    ];

    public static ImmutableArray<PlanWayOut> WaysOut(Impasse? impasse) => [.. (impasse?.WaysOut ?? []).Select(way => new PlanWayOut(way.What, way.Finish))];

    public static ImmutableArray<string> Reasons(Impasse? impasse, ImmutableArray<string> otherwise) =>
        impasse is { Obstacles: { IsEmpty: false } obstacles } ? [.. obstacles.Select(obstacle => obstacle.What)] : otherwise;
}
