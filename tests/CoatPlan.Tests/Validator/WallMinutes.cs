using System.Globalization;

namespace CoatPlan.Tests.Validator;

/// <summary>Wall time as minutes since the first of January 2000, so that the rules can add and compare with plain arithmetic.</summary>
internal static class WallMinutes
{
    public const double Day = 24 * 60;
    private static readonly DateTime s_zero = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Unspecified);
    private static readonly string[] s_forms =
        ["yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd HH:mm", "yyyy-MM-dd H:mm"];

    public static double Read(string text) =>
        TryRead(text) ?? throw new FormatException($"'{text}' is not a wall time");

    public static double? TryRead(string text) =>
        DateTime.TryParseExact(text.Trim(), s_forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var when)
            ? (when - s_zero).TotalMinutes
            : null;

    public static double OfDate(string text) =>
        (DateTime.ParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None) - s_zero).TotalMinutes;

    /// <summary>Monday is 0.</summary>
    public static int WeekdayOf(double minutes) => ((int)s_zero.AddMinutes(minutes).DayOfWeek + 6) % 7;

    public static string Write(double minutes) => s_zero.AddMinutes(minutes).ToString(s_forms[0], CultureInfo.InvariantCulture);
}
