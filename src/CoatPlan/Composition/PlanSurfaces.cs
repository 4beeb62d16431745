using CoatPlan.Areas;
using CoatPlan.Paint;
using CoatPlan.Plans;
using CoatPlan.Timetable;

namespace CoatPlan.Composition;

/// <summary>Measured surfaces as the plan shows them, with when each is ready.</summary>
internal static class PlanSurfaces
{
    public static ImmutableArray<PlanSurface> Of(ImmutableArray<MeasuredSurface> surfaces, Coats coats, DatedJob dated)
    {
        var packages = coats.All.GroupBy(coat => coat.Surface).ToDictionary(group => group.Key, group => group.Sum(coat => coat.Packages), StringComparer.Ordinal);
        var ready = dated.Steps
            .Where(step => step.HandleAt is not null)
            .SelectMany(step => step.Surfaces, (step, id) => (id, step))
            .GroupBy(pair => pair.id)
            .ToDictionary(group => group.Key, group => group.Max(pair => pair.step.End.PlusMinutes(pair.step.HandleAt!.Value - pair.step.To)), StringComparer.Ordinal);
        var tag = 0;
        return
        [
            .. surfaces.Select(measured => new PlanSurface(
                measured.Id,
                measured.Surface.Name,
                measured.Count,
                measured.Piece.SquareMeters,
                measured.Relief,
                measured.Surface.Material,
                measured.Surface.Finish,
                measured.Surface.Conditions,
                measured.Surface.System,
                measured.Surface.Stays,
                measured.Surface.Stays ? null : ++tag,
                dated.InService is not null && ready.TryGetValue(measured.Id, out var at) ? at : null,
                packages.GetValueOrDefault(measured.Id))),
        ];
    }
}
