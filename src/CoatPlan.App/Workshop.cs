using CoatPlan.Jobs;
using CoatPlan.Outlook;

namespace CoatPlan.App;

/// <summary>What turns text into jobs and jobs into plans, with the presets in use.</summary>
/// <param name="Trade">What the trade knows, a person's own presets over it.</param>
/// <param name="Read">Reads a job from its text; the second argument is the name that problems carry, the third the path of its file, null where
/// it has none, for a forecast that lies beside it, the fourth the job before a change of its text, null for none.</param>
/// <param name="Sketch">Plans a job at once, for a person who waits for the effect of a change; the second argument is the plan before the change, null for none.</param>
/// <param name="Plan">Plans a job as well as it can; cancelled when the plan is no longer wanted.</param>
internal sealed record Workshop(Trade Trade, Func<JobDocument, string, string?, ReadyJob?, IntakeResult> Read, Func<ReadyJob, Plan?, PlannedJob> Sketch, Func<ReadyJob, CancellationToken, PlannedJob> Plan)
{
    /// <summary>Ranks the starts of a job.</summary>
    public Func<ReadyJob, IProgress<double>, CancellationToken, ImmutableArray<StartTime>> When { get; init; } = static (ready, progress, cancel) => StartTimes.Of(ready, progress, cancel);

    /// <summary>Says how likely a job is done in time; null where the whole of it cannot be placed.</summary>
    public Func<ReadyJob, IProgress<double>, CancellationToken, Chance?> Chance { get; init; } = static (ready, progress, cancel) => Chances.Of(ready, new ChanceAsked { Threads = Environment.ProcessorCount }, progress, cancel);
}
