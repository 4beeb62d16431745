namespace CoatPlan.Climate;

/// <summary>What the start rules look at, at one minute.</summary>
internal readonly record struct MinuteState(
    double Air, double Relative, double Dew, double Surface, double Wind, double Rain, bool Known, int MinuteOfDay);
