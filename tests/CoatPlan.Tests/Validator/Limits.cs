namespace CoatPlan.Tests.Validator;

/// <summary>A least and a most, either of which may be open.</summary>
internal sealed record Limits(double? Least, double? Most)
{
    public bool Allow(double value, double slack) => !(value < Least - slack) && !(value > Most + slack);
}
