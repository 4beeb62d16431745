namespace CoatPlan;

/// <summary>What the same draws come to with one thing more.</summary>
/// <param name="What">The thing: an hour, a helper, a heater.</param>
/// <param name="Meets">The share of draws that finish by the job's <c>finish-by</c>; null where none was asked.</param>
/// <param name="Finish50">Half of the draws finish by then; null: half of them do not finish within 60 days.</param>
public sealed record ChanceBuy(string What, double? Meets, LocalDateTime? Finish50);
