namespace CoatPlan.Prep;

/// <summary>The wait after an operation.</summary>
/// <param name="Kind">What is waited for.</param>
/// <param name="Time">For <see cref="WaitKind.WashDry"/> and <see cref="WaitKind.SolventFlash"/> the time at 70 °F and 50 %, else as it stands; zero for none.</param>
/// <param name="Why">What is waited for, as a clause that can follow "waits".</param>
/// <param name="Source">Where the time comes from, with its status.</param>
public sealed record OperationWait(WaitKind Kind, Duration Time, string Why, string Source)
{
    /// <summary>No wait.</summary>
    public static OperationWait None { get; } = new(WaitKind.None, Duration.Zero, "", "");
}
