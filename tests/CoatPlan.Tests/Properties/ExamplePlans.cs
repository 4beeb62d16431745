namespace CoatPlan.Tests.Properties;

/// <summary>The plans of the example jobs keep the contract.</summary>
public class ExamplePlans
{
    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "presets", "jobs"), "*.job.yaml").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void An_example_plans_and_its_plan_passes_the_validator(string file)
    {
        string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "jobs", file));

        var plan = DrawnPlan.Of(text, null, out string problems);

        problems.ShouldBeEmpty();
        plan!.Plan.Reasons.ShouldBeEmpty();
        plan.Violations(text, null).Select(violation => violation.ToString()).ShouldBeEmpty();
    }
}
