using System.Text.RegularExpressions;

namespace CoatPlan.Sheets.Content;

/// <summary>A reason as a line on a sheet: where to look it up stays, how that was read stands with the plan.</summary>
internal static partial class WhyLine
{
    private static readonly ImmutableHashSet<string> Statuses =
        ImmutableHashSet.Create(StringComparer.Ordinal, "published", "read second-hand", "common practice");

    /// <summary>The reason with its sources and without their statuses.</summary>
    public static string Of(string why) => Brackets().Replace(why, brackets =>
    {
        var parts = Separators().Split(brackets.Groups["in"].Value);
        var places = parts.Where(part => !Statuses.Contains(part)).ToArray();
        return places.Length == parts.Length ? brackets.Value : places.Length == 0 ? "" : $" ({string.Join("; ", places)})";
    });

    [GeneratedRegex(@" \((?<in>(?:[^()]|\([^()]*\))*)\)")]
    private static partial Regex Brackets();

    [GeneratedRegex(@"\s*[;,]\s*")]
    private static partial Regex Separators();
}
