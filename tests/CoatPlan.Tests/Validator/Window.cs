namespace CoatPlan.Tests.Validator;

/// <summary>When the next coat may follow, in minutes at the label's conditions: opened after the end of the coat before, closed after its start.</summary>
internal sealed record Window(double Open, double? Close);
