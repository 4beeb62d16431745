using CoatPlan.Prep;

namespace CoatPlan.Cautions;

/// <summary>A row of cautions.yaml.</summary>
internal sealed record CautionRow(string Code, RuleCondition Condition, string Text, string Source);
