using CoatPlan.App.Wording;
using CoatPlan.Plans;

namespace CoatPlan.App.Desk;

/// <summary>What is wrong with a plan, as a page: why it is not as asked, the ways out that were tried, and its warnings.</summary>
internal static class TroublesPage
{
    /// <summary>The page of a plan.</summary>
    /// <param name="plan">The plan.</param>
    public static TextPage Of(Plan plan)
    {
        var lines = ImmutableArray.CreateBuilder<PageLine>();
        if (!plan.Reasons.IsEmpty)
        {
            lines.Add(new PageLine(PageLineKind.Heading, "", "There is no plan that meets what was asked"));
            lines.AddRange(plan.Reasons.Select(reason => new PageLine(PageLineKind.Warning, "! ", reason)));
        }

        if (!plan.WaysOut.IsEmpty)
        {
            lines.Add(new PageLine(PageLineKind.Heading, "", "Ways out, each tried"));
            lines.AddRange(plan.WaysOut.Select(way => new PageLine(PageLineKind.Text, "> ", Sentences.WayOut(way))));
        }

        lines.Add(new PageLine(PageLineKind.Heading, "", plan.Warnings.IsEmpty ? "The plan warns of nothing" : Written.Count(plan.Warnings.Length, "warning", "warnings")));
        foreach (var warning in plan.Warnings)
            lines.Add(new PageLine(PageLineKind.Warning, "! ", $"{NameOf(plan, warning)}{warning.Text} [{warning.Code}]"));
        return new TextPage("What to look at before the work begins", lines.ToImmutable());
    }

    private static string NameOf(Plan plan, PlanWarning warning) =>
        plan.Surfaces.FirstOrDefault(surface => surface.Id == warning.Surface) is { } surface && !warning.Text.Contains(surface.Name, StringComparison.Ordinal) ? $"{surface.Name}: " : "";
}
