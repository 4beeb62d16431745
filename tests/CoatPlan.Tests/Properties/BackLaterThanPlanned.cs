using System.Globalization;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>Whoever comes back to the work hours or days later than planned gets a plan for the rest of it: films, tape and wipes that waited too long are seen to.</summary>
public class BackLaterThanPlanned
{
    private const int Jobs = 60;

    private static readonly (double Share, int Hours)[] s_returns = [(0.3, 5), (0.5, 20), (0.7, 72), (0.9, 11)];

    [Fact]
    public void There_is_a_plan_for_the_rest()
    {
        var failures = new List<string>(); var came = 0;
        foreach (var (seed, drawn) in Draws.Jobs(Jobs))
        {
            if (drawn.Crew.Any(line => line.StartsWith("stations", StringComparison.Ordinal)) || DrawnPlan.Read(drawn.Text(), drawn.Hours).Ready is not { } job)
            {
                continue;
            }

            var plan = Planner.Plan(job, SearchDepth.Quick);
            foreach (var (share, hours) in plan.InService is null ? [] : s_returns)
            {
                var left = plan.Steps.OrderBy(step => step.End).ElementAt((int)(share * (plan.Steps.Length - 1))).End;
                string text = HalfDone.Text(drawn.Text(), plan, left);
                string back = text.Replace(
                    string.Create(CultureInfo.InvariantCulture, $"as-of: {left:uuuu-MM-dd HH:mm}"),
                    string.Create(CultureInfo.InvariantCulture, $"as-of: {left.PlusHours(hours):uuuu-MM-dd HH:mm}"), StringComparison.Ordinal);
                back.ShouldNotBe(text);
                var after = Planner.Plan(DrawnPlan.Read(back, drawn.Hours).Ready!, SearchDepth.Quick);
                came++;
                if (after.InService is null) { Directory.CreateDirectory($"/tmp/back/{seed}-{hours}"); File.WriteAllText($"/tmp/back/{seed}-{hours}/a.job.yaml", back); if (drawn.Hours is not null) File.WriteAllText($"/tmp/back/{seed}-{hours}/forecast.csv", drawn.Hours); } if (after.InService is null) failures.Add($"seed {seed} share {share} hours {hours}: {string.Join(" | ", after.Reasons)}");
            }
        }

        (failures.Count + " of " + came + "\n" + string.Join('\n', failures)).ShouldBe("");
    }
}
