namespace CoatPlan.Paint;

/// <summary>"4 cans cover 83 %".</summary>
/// <param name="Packages">Packages, at least 0.</param>
/// <param name="Share">Share of the draws in which they are enough, 0 to 1.</param>
public sealed record CoveredShare(int Packages, double Share);
