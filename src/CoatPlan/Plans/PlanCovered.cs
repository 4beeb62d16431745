namespace CoatPlan.Plans;

/// <summary>The share of draws that a number of packages covers.</summary>
/// <param name="Cans">Packages.</param>
/// <param name="Share">Share of draws, 0 to 1.</param>
public sealed record PlanCovered(int Cans, double Share);
