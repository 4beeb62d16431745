using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Composition;

/// <summary>Idle hours and rest points as the plan shows them.</summary>
internal static class PlanWhys
{
    public static ImmutableArray<PlanIdle> Idle(DatedJob dated) =>
        [.. dated.Idle.Select(idle => new PlanIdle(idle.From, idle.To, idle.Station, idle.People, idle.Why))];

    public static ImmutableArray<PlanRestPoint> RestPoints(DatedJob dated) =>
        [.. dated.RestPoints.Select(point => new PlanRestPoint(point.After, point.At, point.Why))];
}
