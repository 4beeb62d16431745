using CoatPlan.App.Wording;

namespace CoatPlan.App.Desk;

/// <summary>Two plans side by side, as a page: what each comes to, and what the second changes.</summary>
internal static class ComparisonPage
{
    private const string Unknown = "not known";

    private const int LabelWidth = 14;

    /// <summary>The page of a comparison.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="currency">Currency of prices that name none.</param>
    public static TextPage Of(PlanComparison comparison, string currency)
    {
        var lines = ImmutableArray.CreateBuilder<PageLine>();
        var (first, second) = (comparison.First, comparison.Second);
        Row("", plan => plan.Name);
        Row("finish", plan => Moment(plan.IsWhole ? plan.Finish : null));
        Row("in service", plan => Moment(plan.InService));
        Row("asked", plan => plan.Meets ? "met" : "not met");
        Row("hands-on", plan => $"{Written.Minutes(Math.Round(plan.HandsH * 60))}, {Written.Count(plan.Days, "day", "days")}");
        Row("cans", plan => $"{plan.Cans}, {plan.Buy} to buy");
        Row("price", plan => plan.Price is { } price ? Written.Money(price, plan.Currency ?? currency) : Unknown);
        if (first.Quote is not null || second.Quote is not null)
            Row("quote", plan => plan.Quote is { } quote ? Written.Money(quote, plan.Currency ?? currency) : "none");
        Row("peak mixture", plan => Times(plan.PeakMixtureRatio));
        Row("8 h average", plan => Times(plan.TwaMixtureRatio));
        Row("peak of LEL", plan => plan.PeakLelRatio is { } share ? Written.Percent(share) : "none");
        Row("respirator", plan => plan.Respirator);
        Row("warnings", plan => plan.Warnings.IsEmpty ? "none" : string.Join(", ", plan.Warnings));

        lines.Add(new PageLine(PageLineKind.Heading, "", "What the second changes"));
        Say("- ", comparison.FinishMovesMin switch
        {
            null => "One of them could not be placed in full.",
            0 => "It finishes at the same minute.",
            > 0 and var later => $"It finishes {Written.Minutes(later)} later.",
            var earlier => $"It finishes {Written.Minutes(-earlier.Value)} earlier.",
        });
        Say("- ", comparison.MoreCans switch
        {
            0 => "It needs as many cans.",
            > 0 and var more => $"It needs {Written.Count(more, "can", "cans")} more.",
            var fewer => $"It needs {Written.Count(-fewer, "can", "cans")} fewer.",
        });
        if (!comparison.NewWarnings.IsEmpty)
            Say("! ", $"It warns of {string.Join(", ", comparison.NewWarnings)} besides.");
        if (!comparison.GoneWarnings.IsEmpty)
            Say("- ", $"It no longer warns of {string.Join(", ", comparison.GoneWarnings)}.");
        return new TextPage("Side by side", lines.ToImmutable());

        // One under the other, so that long words have room in a narrow terminal; what is equal is said once.
        void Row(string label, Func<ComparedPlan, string> say)
        {
            var (one, other) = (say(first), say(second));
            lines.Add(new PageLine(PageLineKind.Text, label.PadRight(LabelWidth), one == other ? $"{one}  (both)" : $"1: {one}"));
            if (one != other)
                lines.Add(new PageLine(PageLineKind.Text, new string(' ', LabelWidth), $"2: {other}"));
        }

        void Say(string lead, string text) => lines.Add(new PageLine(PageLineKind.Text, lead, text));
    }

    private static string Moment(LocalDateTime? at) => at is { } known ? Clock.Moment(known) : "could not be placed in full";

    private static string Times(double? ratio) => ratio is { } known ? $"{Written.Number(known, 2)} times the limit" : "none";
}
