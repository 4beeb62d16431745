namespace CoatPlan.Obstacles;

/// <summary>What planning an ask came to.</summary>
/// <param name="Finish">End of the last step; null where the whole of the job could not be placed.</param>
/// <param name="Warnings">What it warns of about its products and coats, in its words: another class may fail a surface for another reason under the same code.</param>
public sealed record Trial(LocalDateTime? Finish, ImmutableArray<string> Warnings);
