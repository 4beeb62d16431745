using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>A caution as a line on a sheet.</summary>
internal static class CautionLine
{
    /// <summary>Said once below the lines.</summary>
    public const string Legend = "Lines that name no source are common practice of the trade.";

    private static readonly ImmutableHashSet<string> Statuses =
        ImmutableHashSet.Create(StringComparer.Ordinal, "published", "read second-hand", "common practice");

    /// <summary>The caution with the place to look it up; how that was read stands with the plan.</summary>
    /// <param name="caution">The caution.</param>
    public static string Of(PlanCaution caution)
    {
        var places = caution.Source
            .Split([';', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Where(part => !Statuses.Contains(part));
        var source = string.Join("; ", places);
        return source.Length == 0 ? caution.Text : $"{caution.Text} ({source})";
    }
}
