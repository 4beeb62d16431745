namespace CoatPlan.Climate;

/// <summary>A row of a forecast on the minutes of a job.</summary>
internal readonly record struct ForecastKnot(int Minute, double Celsius, double Relative, double Wind, double Rain);
