using System.Globalization;
using CoatPlan.App.Wording;

namespace CoatPlan.App.Desk;

/// <summary>How likely a job is done in time, as a page.</summary>
internal static class ChancePage
{
    private const int MostCostly = 6;

    /// <summary>The page of a chance.</summary>
    /// <param name="chance">The chance.</param>
    /// <param name="finishBy">When the job must be done; null where nothing was asked.</param>
    public static TextPage Of(Chance chance, LocalDateTime? finishBy)
    {
        var lines = ImmutableArray.CreateBuilder<PageLine>();
        Say("planned     ", $"finish {Clock.Moment(chance.Planned)}");
        if (chance.Meets is { } meets && finishBy is { } asked)
            Say("in time     ", $"{Written.Percent(meets)} of {chance.Draws.ToString("#,##0", CultureInfo.InvariantCulture)} draws finish by {Clock.Moment(asked)}");
        Say("even odds   ", $"finish by {Moment(chance.Finish50)}");
        Say("9 of 10     ", $"finish by {Moment(chance.Finish90)}");

        Head("What costs the most");
        if (chance.Costly.IsEmpty)
            Say("- ", "Nothing moves the finish by a minute on the average.");
        foreach (var cost in chance.Costly.Take(MostCostly))
            Say("- ", $"{cost.What}: {Written.Minutes(Math.Round(cost.Minutes))} on the average");

        if (!chance.Buys.IsEmpty)
            Head("What would help");
        foreach (var buy in chance.Helping)
            Say("- ", $"With {buy.What}: {(buy.Meets is { } share ? $"{Written.Percent(share)} in time, " : "")}even odds {Moment(buy.Finish50)}");
        if (!chance.Idle.IsEmpty)
            Say("- ", $"Tried, and changing nothing for the better: {string.Join("; ", chance.Idle.Select(buy => buy.What))}");

        Head("Cans");
        foreach (var cans in chance.Cans)
            Say("- ", $"{cans.Product}: {Written.Count(cans.Cans, "can is", "cans are")} enough in {Written.Percent(cans.Share)} of draws");
        lines.Add(new PageLine(PageLineKind.Quiet, "", "Each draw carries the plan out under other hands, drying and weather; how far they spread is an estimate of the presets."));
        return new TextPage("How likely is it done in time?", lines.ToImmutable());

        void Head(string text) => lines.Add(new PageLine(PageLineKind.Heading, "", text));
        void Say(string lead, string text) => lines.Add(new PageLine(PageLineKind.Text, lead, text));
    }

    private static string Moment(LocalDateTime? at) => at is { } known ? Clock.Moment(known) : "not within 60 days";
}
