using System.Text.Json;

namespace CoatPlan.Tests.Validator;

/// <summary>
/// Holds a plan's JSON against its job file by the rules of the two contracts alone. It shares no code with the program: it reads the job
/// file, its quantities, its calendar and its weather by itself, and what only a preset could know it does not judge.
/// </summary>
public static class PlanValidator
{
    /// <summary>All the ways in which the plan breaks the contract; empty where there is none.</summary>
    /// <param name="plan">The document that the plan command prints as JSON.</param>
    /// <param name="jobYaml">The text of the job file.</param>
    /// <param name="hoursFile">The text of the hourly weather file that the job names, or null.</param>
    public static ImmutableArray<Violation> Check(JsonElement plan, string jobYaml, string? hoursFile = null)
    {
        var shape = SchemaRule.Check(plan);
        if (shape.Length > 0)
        {
            return shape;
        }

        var test = new PlanUnderTest(PlanView.Read(plan), JobView.Read(jobYaml, hoursFile));
        return
        [
            .. IdentityRules.Check(test),
            .. HoursRules.Check(test),
            .. IdleRules.Check(test),
            .. RestRules.Check(test),
            .. WaitRules.Check(test),
            .. CoatRules.Check(test),
            .. DustRules.Check(test),
            .. TapeRules.Check(test),
            .. PrepRules.Check(test),
            .. WeatherRules.Check(test),
            .. OutcomeRules.Check(test),
            .. SupplyRules.Check(test),
            .. AirRules.Check(test),
        ];
    }
}
