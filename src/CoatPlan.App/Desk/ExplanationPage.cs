using CoatPlan.Explanations;

namespace CoatPlan.App.Desk;

/// <summary>How a figure came about, as a page: its sum, what it follows from, and the source of each.</summary>
internal static class ExplanationPage
{
    private const int Step = 2;

    /// <summary>The page of an explanation.</summary>
    /// <param name="explanation">The explanation.</param>
    public static TextPage Of(Explanation explanation)
    {
        var lines = ImmutableArray.CreateBuilder<PageLine>();
        Say(lines, explanation, 0);
        return new TextPage($"How it came about: {explanation.What}", lines.ToImmutable());
    }

    /// <summary>The figure that is nearest to what is chosen, by its place in the plan's JSON.</summary>
    /// <param name="desk">The desk.</param>
    public static string FigureAt(JobDesk desk) => desk.Place switch
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
        : $"consumables[{(at - plan.Supplies.Length).ToString(System.Globalization.CultureInfo.InvariantCulture)}].amount";

    private static void Say(ImmutableArray<PageLine>.Builder lines, Explanation explanation, int depth)
    {
        var indent = new string(' ', depth * Step);
        lines.Add(new PageLine(depth == 0 ? PageLineKind.Heading : PageLineKind.Text, indent, $"{explanation.What}: {explanation.Value}"));
        if (explanation.Formula.Length > 0)
            lines.Add(new PageLine(PageLineKind.Text, $"{indent}  = ", explanation.Formula));
        lines.Add(new PageLine(PageLineKind.Quiet, $"{indent}  source: ", explanation.Source));
        foreach (var input in explanation.Inputs)
            Say(lines, input, depth + 1);
    }
}
