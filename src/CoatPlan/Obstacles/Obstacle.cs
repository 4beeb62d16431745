namespace CoatPlan.Obstacles;

/// <summary>Why there is no plan as asked: a rule without which there is one, or several of which none can be kept.</summary>
/// <param name="Rules">The rules; of several, each keeps the job from being planned as long as it stands.</param>
/// <param name="What">It in words, with figures.</param>
/// <param name="Finish">When the job would be finished without them.</param>
internal sealed record Obstacle(ImmutableArray<ObstacleRule> Rules, string What, LocalDateTime Finish);
