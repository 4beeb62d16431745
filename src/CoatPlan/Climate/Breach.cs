namespace CoatPlan.Climate;

/// <summary>A rule broken at one minute, with what was read and what it asks.</summary>
internal readonly record struct Breach(StartRule Rule, double Measured, double Limit);
