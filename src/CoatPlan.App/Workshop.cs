namespace CoatPlan.App;

/// <summary>What turns text into jobs and jobs into plans, with the presets in use.</summary>
/// <param name="Trade">What the trade knows, a person's own presets over it.</param>
/// <param name="Read">Reads a job from its text; the second argument is the name that problems carry, the third the path of its file, null where
/// it has none, for a forecast that lies beside it.</param>
/// <param name="Sketch">Plans a job at once, for a person who waits for the effect of a change.</param>
/// <param name="Plan">Plans a job as well as it can.</param>
internal sealed record Workshop(Trade Trade, Func<string, string, string?, IntakeResult> Read, Func<ReadyJob, Plan> Sketch, Func<ReadyJob, Plan> Plan);
