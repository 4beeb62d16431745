using System.CommandLine;
using CoatPlan.Jobs;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan schema [job|plan]</c>: the JSON Schema of the job file or of a plan's JSON.</summary>
internal static class SchemaCommand
{
    private const string Job = "job";

    private const string Plan = "plan";

    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("schema", "Print the JSON Schema of the job file, with which an editor completes and checks it, or of a plan's JSON.");
        var what = new Argument<string>("WHAT") { Description = "job or plan; job unless said", DefaultValueFactory = _ => Job };
        what.AcceptOnlyFromAmong(StringComparer.OrdinalIgnoreCase, Job, Plan);
        command.Add(what);
        command.SetAction(parsed =>
        {
            surroundings.Out.Write(string.Equals(parsed.GetRequiredValue(what), Plan, StringComparison.OrdinalIgnoreCase)
                ? Printed.Resource("schema/plan.schema.json")
                : JobSchema.Write());
            return ExitCode.Done;
        });
        return command;
    }
}
