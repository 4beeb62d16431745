using CoatPlan.App.Desk;
using CoatPlan.App.Wording;
using CoatPlan.Jobs;

namespace CoatPlan.App.Screens;

/// <summary>The line that is always there: finish, cans, price, warnings.</summary>
internal static class TotalsScreen
{
    /// <summary>Draws it.</summary>
    /// <param name="canvas">The whole screen.</param>
    /// <param name="y">The row.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, int y, JobDesk desk)
    {
        canvas.Field(0, y, canvas.Width, $" {Text(desk)}", Ink.Bar);
    }

    /// <summary>The line as text.</summary>
    /// <param name="desk">The desk.</param>
    public static string Text(JobDesk desk)
    {
        if (desk.Guiding is not null)
            return $"{Written.Count(desk.GuideAnswers, "answer", "answers")} so far; the plan follows";

        if (desk.Job is null)
            return $"{Written.Count(desk.Reading.Problems.Length, "mistake", "mistakes")} in the job file: no plan";

        if (desk.Plan is not { } plan)
            return desk.Planning ? "planning..." : "no plan";

        var parts = new List<string> { desk.Planning ? $"planning: {FinishSoFar(plan)}" : desk.Improving ? $"improving: {FinishSoFar(plan)}" : Finish(plan) };
        parts.Add($"{Written.Count(plan.Supplies.Sum(supply => supply.Cans), "can", "cans")}, buy {plan.Supplies.Sum(supply => supply.Buy)}");
        if (Price(plan, desk.Job) is { } price)
            parts.Add(price);
        parts.Add(Troubles(plan));
        return string.Join(" · ", parts);
    }

    private static string Troubles(Plan plan)
    {
        var key = Keys.NameOf(Word.Troubles);
        return !plan.Warnings.IsEmpty ? $"{key}: {Written.Count(plan.Warnings.Length, "warning", "warnings")}"
            : plan.Reasons.IsEmpty ? "no warnings"
            : $"{key}: why";
    }

    // A first plan that is late may still come in on time: it is told as what it is, and nobody is alarmed.
    private static string FinishSoFar(Plan plan) => plan.Finish is { } finish ? $"finish {Clock.Moment(finish)}" : "nothing placed";

    private static string Finish(Plan plan)
    {
        if (plan.Finish is not { } finish)
            return "! nothing could be placed";

        var how = plan switch
        {
            { IsWhole: false } => "! placed in part, until",
            { MeetsWhatWasAsked: false } => "! not as asked:",
            _ => "finish",
        };
        return $"{how} {Clock.Moment(finish)}";
    }

    private static string? Price(Plan plan, Job job)
    {
        if (plan.Quote is { } quote)
            return $"quote {Written.Money(quote.Total, quote.Currency)}";

        var known = plan.Supplies.Where(supply => supply.Buy > 0 && supply.Price is not null).ToList();
        return known.Count == 0 ? null : Written.Money(known.Sum(supply => supply.Price!.Value), job.Prices?.Currency ?? JobDefaults.Currency);
    }
}
