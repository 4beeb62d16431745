using CoatPlan.Explanations;
using CoatPlan.Timetable;

namespace CoatPlan.App;

/// <summary>A plan, and the account of each of its figures.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Explain">Explains a figure, by its plain name or its place in the plan's JSON.</param>
/// <param name="Figures">Names every figure that can be explained.</param>
internal sealed record PlannedJob(Plan Plan, Func<string, ExplanationReading> Explain, Func<ImmutableArray<string>> Figures)
{
    /// <summary>Plans a job at once.</summary>
    /// <param name="ready">The job.</param>
    /// <param name="before">The plan before a change of the job, near which the next is sought; null for none.</param>
    public static PlannedJob AtOnce(ReadyJob ready, Plan? before) => Of(before is null ? Planner.Work(ready, SearchDepth.Quick) : Planner.Work(ready, before));

    /// <summary>Plans a job as well as it can be.</summary>
    /// <param name="ready">The job.</param>
    /// <param name="cancel">Ends the search when the plan is no longer wanted.</param>
    public static PlannedJob InFull(ReadyJob ready, CancellationToken cancel) => Of(Planner.Work(ready, SearchDepth.Full, cancel));

    /// <summary>A plan of which nothing is known but itself.</summary>
    /// <param name="plan">The plan.</param>
    public static PlannedJob Alone(Plan plan) => new(plan, static _ => new ExplanationReading(null, []), static () => []);

    private static PlannedJob Of((Plan Plan, Workings Workings) worked) =>
        new(worked.Plan, what => Explaining.Of(worked.Workings, what), () => Explaining.Paths(worked.Workings));
}
