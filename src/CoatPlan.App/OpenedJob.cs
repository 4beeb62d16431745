using CoatPlan.Jobs;

namespace CoatPlan.App;

/// <summary>A job file that was read without a mistake, ready to be planned.</summary>
/// <param name="Name">What messages call it.</param>
/// <param name="Ready">The job with all that its plan needs.</param>
internal sealed record OpenedJob(string Name, ReadyJob Ready)
{
    /// <summary>The job.</summary>
    public Job Job => Ready.Job;
}
