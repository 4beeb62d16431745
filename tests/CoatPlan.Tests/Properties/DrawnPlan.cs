using System.Text.Json;
using CoatPlan.Tests.Validator;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Properties;

/// <summary>What the program makes of the text of a job.</summary>
internal sealed record DrawnPlan(Plan Plan, string Json)
{
    /// <summary>The plan of a job; null where the text is no job.</summary>
    public static DrawnPlan? Of(string text, string? hours, out string problems, SearchDepth depth = SearchDepth.Full)
    {
        var intake = Read(text, hours);
        problems = string.Join('\n', intake.Problems);
        if (intake.Ready is not { } ready)
        {
            return null;
        }

        var plan = Planner.Plan(ready, depth);
        return new DrawnPlan(plan, PlanJson.Write(plan));
    }

    /// <summary>Reads a drawn job.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="hours">The text of its forecast; null where none is drawn.</param>
    /// <param name="before">The job before a change of its text; null for none.</param>
    public static IntakeResult Read(string text, string? hours, ReadyJob? before = null) =>
        JobIntake.Read(text, "drawn.job.yaml", Trade.Standard, _ => hours is null ? FileText.Unreadable("none is drawn") : FileText.Of(hours), before);

    /// <summary>The plan of a job that is known to be one.</summary>
    public static DrawnPlan Of(DrawnJob job, double areaFactor = 1, double colderF = 0, SearchDepth depth = SearchDepth.Full) =>
        Of(job.Text(areaFactor, colderF), job.Hours, out string problems, depth) ?? throw new ShouldAssertException($"no job:\n{problems}\n{job}");

    public ImmutableArray<Violation> Violations(string text, string? hours)
    {
        using var document = JsonDocument.Parse(Json);
        return PlanValidator.Check(document.RootElement, text, hours);
    }
}
