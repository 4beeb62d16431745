namespace CoatPlan.Obstacles;

/// <summary>What planning an ask came to.</summary>
/// <param name="Finish">End of the last step; null where the whole of the job could not be placed.</param>
/// <param name="Warnings">Codes of the warnings of its products and coats.</param>
public sealed record Trial(LocalDateTime? Finish, ImmutableArray<string> Warnings);
