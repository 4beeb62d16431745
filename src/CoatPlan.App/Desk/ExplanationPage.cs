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
