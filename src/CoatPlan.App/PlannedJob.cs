using CoatPlan.Explanations;

namespace CoatPlan.App;

/// <summary>A plan, and the account of each of its figures.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Explain">Explains a figure, by its plain name or its place in the plan's JSON.</param>
/// <param name="Figures">Names every figure that can be explained.</param>
internal sealed record PlannedJob(Plan Plan, Func<string, ExplanationReading> Explain, Func<ImmutableArray<string>> Figures)
{
    /// <summary>Plans a job.</summary>
    /// <param name="ready">The job.</param>
    /// <param name="depth">How far to search for an earlier finish.</param>
    public static PlannedJob Of(ReadyJob ready, Timetable.SearchDepth depth)
    {
        var (plan, workings) = Planner.Work(ready, depth);
        return new PlannedJob(plan, what => Explaining.Of(workings, what), () => Explaining.Paths(workings));
    }

    /// <summary>A plan of which nothing is known but itself.</summary>
    /// <param name="plan">The plan.</param>
    public static PlannedJob Alone(Plan plan) => new(plan, static _ => new ExplanationReading(null, []), static () => []);
}
