using System.Globalization;

namespace CoatPlan.App.Desk;

/// <summary>Which figure of the plan stands for what is chosen on a desk.</summary>
internal static class ChosenFigure
{
    /// <summary>The figure that is nearest to what is chosen, by its place in the plan's JSON.</summary>
    /// <param name="desk">The desk.</param>
    public static string Of(JobDesk desk) => desk.Place switch
    {
        DeskPlace.Surfaces when desk.Surface is { } surface => $"surfaces[{surface.Id}].{FieldOf(desk.ColumnAt)}",
        DeskPlace.Sequence or DeskPlace.Timeline when desk.Step is { } step => $"step {step.Id}",
        DeskPlace.Supplies when desk.Plan is { } plan => SupplyAt(plan, desk.SupplyAt),
        DeskPlace.Air => "air",
        DeskPlace.Sheets when desk.Plan?.Quote is not null => "quote",
        _ => "finish",
    };

    private static string FieldOf(SurfaceColumn column) => column switch
    {
        SurfaceColumn.Count => "count",
        SurfaceColumn.Area => "areaM2",
        SurfaceColumn.Cans or SurfaceColumn.System => "packages",
        _ => "readyAt",
    };

    private static string SupplyAt(Plan plan, int at) => at < plan.Supplies.Length
        ? $"supplies[{plan.Supplies[at].Product}].cans"
        : $"consumables[{(at - plan.Supplies.Length).ToString(CultureInfo.InvariantCulture)}].amount";
}
