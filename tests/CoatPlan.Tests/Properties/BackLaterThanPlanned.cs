using System.Globalization;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>Whoever comes back to the work hours or days later than planned gets a plan for the rest of it: films, tape and wipes that waited too long are seen to.</summary>
public class BackLaterThanPlanned
{
    private const int Jobs = 60;

    private static readonly (double Share, int Hours)[] s_returns = [(0.3, 5), (0.5, 20), (0.7, 72), (0.9, 11)];

    [Fact]
    public void There_is_a_plan_for_the_rest_and_it_passes_the_validator()
    {
        int back = 0;
        foreach (var (seed, drawn) in Draws.Jobs(Jobs).Where(draw => CanWait(draw.Job)))
        {
            if (DrawnPlan.Of(drawn.Text(), drawn.Hours, out _, SearchDepth.Quick) is not { Plan: { InService: not null } plan })
            {
                continue;
            }

            foreach (var (share, hours) in s_returns)
            {
                string text = Later(drawn.Text(), plan, plan.Steps.OrderBy(step => step.End).ElementAt((int)(share * (plan.Steps.Length - 1))).End, hours);
                string said = $"seed {seed}, {share} done, {hours} h later\n{text}";

                var rest = DrawnPlan.Of(text, drawn.Hours, out _, SearchDepth.Quick).ShouldNotBeNull(said);

                rest.Plan.InService.ShouldNotBeNull($"{string.Join('\n', rest.Plan.Reasons)}\n{said}");
                rest.Violations(text, drawn.Hours).ShouldBeEmpty(said);
                back++;
            }
        }

        back.ShouldBeGreaterThan(Jobs);
    }

    // Not a film that is to be stripped when its window is missed, and not a crew that has named days and no others.
    private static bool CanWait(DrawnJob job) =>
        !job.Crew.Any(line => line.StartsWith("stations", StringComparison.Ordinal))
        && job.Crew.Any(line => line.StartsWith("hours", StringComparison.Ordinal) && (line.Contains("Mon", StringComparison.Ordinal) || line.Contains("Sat", StringComparison.Ordinal)))
        && !job.Text().Contains("missed: strip", StringComparison.Ordinal);

    private static string Later(string text, Plan plan, LocalDateTime left, int hours) => HalfDone.Text(text, plan, left).Replace(
        string.Create(CultureInfo.InvariantCulture, $"as-of: {left:uuuu-MM-dd HH:mm}"),
        string.Create(CultureInfo.InvariantCulture, $"as-of: {left.PlusHours(hours):uuuu-MM-dd HH:mm}"),
        StringComparison.Ordinal);
}
