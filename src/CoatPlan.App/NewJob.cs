using System.Globalization;
using NodaTime.Text;

namespace CoatPlan.App;

/// <summary>The job that a person starts from.</summary>
internal static class NewJob
{
    private const string Resource = "new.job.yaml";

    private static readonly LocalTime FirstHour = new(16, 0);

    private static readonly LocalTime LastHour = new(20, 0);

    private static readonly LocalDateTimePattern Written = LocalDateTimePattern.Create("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Its text, for the weekend that comes next.</summary>
    /// <param name="now">The time on the wall.</param>
    public static string Text(LocalDateTime now)
    {
        var friday = Start(now);
        var sunday = friday.Date.Next(IsoDayOfWeek.Sunday);
        return Template()
            .Replace("{start}", Written.Format(friday), StringComparison.Ordinal)
            .Replace("{finish}", Written.Format(sunday.At(LastHour)), StringComparison.Ordinal);
    }

    /// <summary>When the weekend that comes next begins, for those who have Friday evening.</summary>
    /// <param name="now">The time on the wall.</param>
    public static LocalDateTime Start(LocalDateTime now) =>
        (now.DayOfWeek == IsoDayOfWeek.Friday && now.TimeOfDay < FirstHour ? now.Date : now.Date.Next(IsoDayOfWeek.Friday)).At(FirstHour);

    private static string Template()
    {
        using var stream = typeof(NewJob).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not in the assembly");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
