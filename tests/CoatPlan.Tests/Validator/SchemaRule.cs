using System.Text.Json;
using Json.Schema;

namespace CoatPlan.Tests.Validator;

/// <summary>The plan has the shape of plan.schema.json.</summary>
internal static class SchemaRule
{
    private static readonly JsonSchema s_schema =
        JsonSchema.FromText(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "plan.schema.json")));

    public static ImmutableArray<Violation> Check(JsonElement plan)
    {
        var result = s_schema.Evaluate(plan, new EvaluationOptions { OutputFormat = OutputFormat.List });
        if (result.IsValid)
        {
            return [];
        }

        var details = (result.Details ?? []).Where(detail => detail.Errors is { Count: > 0 });
        return
        [
            .. details.SelectMany(detail => detail.Errors!.Select(error =>
                new Violation(Rules.Schema, detail.InstanceLocation.ToString(), error.Value))).DefaultIfEmpty(new Violation(Rules.Schema, "", "not valid")),
        ];
    }
}
