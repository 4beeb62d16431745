using System.Globalization;
using System.Text;
using NodaTime.Text;

namespace CoatPlan.Tests.Properties;

/// <summary>A drawn job in the middle of its work: what its plan had ended by then is written down as done, and the rest is planned again.</summary>
internal static class HalfDone
{
    private static readonly LocalDateTimePattern s_time = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm");

    /// <summary>The text of the job at a share of its steps; null where nothing is planned.</summary>
    public static string? Text(string text, Plan plan, double share)
    {
        if (plan.Steps.IsEmpty)
        {
            return null;
        }

        return Text(text, plan, plan.Steps.OrderBy(step => step.End).ElementAt((int)(share * (plan.Steps.Length - 1))).End);
    }

    /// <summary>The text of the job at a moment.</summary>
    public static string Text(string text, Plan plan, LocalDateTime now)
    {
        var done = new StringBuilder(text).Append(CultureInfo.InvariantCulture, $"as-of: {s_time.Format(now)}\ndone:\n");
        foreach (var step in plan.Steps.Where(step => step.End <= now && step.Station is null or 1))
        {
            string what = step.Coat is { } coat ? $"layer: {step.Layer}, coat: {coat}" : $"operation: {step.Kind}";
            string where = step.Surfaces.IsEmpty ? "" : $"surfaces: [{string.Join(", ", step.Surfaces)}], ";
            done.Append(CultureInfo.InvariantCulture, $"  - {{{where}{what}, at: {s_time.Format(step.End)}, took: {step.HandsMin} min}}\n");
        }

        return done.ToString();
    }
}
