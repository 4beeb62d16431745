using System.Globalization;

namespace CoatPlan.App.Wording;

/// <summary>What a chance says, in words: the same on the screen and from the command.</summary>
internal static class ChanceWords
{
    private const int MostCostly = 6;

    /// <summary>The share of draws that are in time, as in <c>97 % of 10,000 draws finish by Fri 12 Mar 17:00</c>.</summary>
    /// <param name="meets">The share.</param>
    /// <param name="draws">How many draws.</param>
    /// <param name="asked">When the job must be done.</param>
    public static string InTime(double meets, int draws, LocalDateTime asked) =>
        $"{Written.Percent(meets)} of {draws.ToString("#,##0", CultureInfo.InvariantCulture)} draws finish by {Clock.Moment(asked)}";

    /// <summary>A finish; one that is further off than is looked says so.</summary>
    /// <param name="at">The finish; null where it is further off.</param>
    public static string Finish(LocalDateTime? at) => at is { } known ? Clock.Moment(known) : "not within 60 days";

    /// <summary>What costs the most, dearest first, a sentence each; one that says so where nothing does.</summary>
    /// <param name="chance">The chance.</param>
    public static IEnumerable<string> Costs(Chance chance) => chance.Costly.IsEmpty
        ? ["Nothing moves the finish by a minute on the average."]
        : chance.Costly.Take(MostCostly).Select(cost => $"{cost.What}: {Written.Minutes(Math.Round(cost.Minutes))} on the average");

    /// <summary>What would help, beside what it is without, and last what would not; nothing where nothing was tried.</summary>
    /// <param name="chance">The chance.</param>
    public static IEnumerable<string> Helps(Chance chance)
    {
        foreach (var buy in chance.Helping)
            yield return $"With {buy.What}: {Share(buy, chance.Unbought)}even odds {Beside(Finish(buy.Finish50), chance.Unbought is { } without ? Finish(without.Finish50) : null)}";
        if (!chance.Idle.IsEmpty)
            yield return $"Tried, and changing nothing for the better: {string.Join("; ", chance.Idle.Select(buy => buy.What))}";
    }

    /// <summary>How many cans are enough how often, a sentence each.</summary>
    /// <param name="chance">The chance.</param>
    public static IEnumerable<string> Cans(Chance chance) =>
        chance.Cans.Select(cans => $"{cans.Product}: {Written.Count(cans.Cans, "can is", "cans are")} enough in {Written.Percent(cans.Share)} of draws");

    private static string Share(ChanceBuy buy, ChanceBuy? without) => buy.Meets is { } share
        ? $"{Beside(Written.Percent(share), without?.Meets is { } known ? Written.Percent(known) : null)} in time, "
        : "";

    private static string Beside(string with, string? without) => without is null || with == without ? with : $"{with} instead of {without}";
}
