namespace CoatPlan.Climate;

/// <summary>Permitted and forbidden minutes of a day.</summary>
/// <param name="Air">The air they were computed from.</param>
/// <param name="Metal">The surface they were computed from.</param>
/// <param name="NextPermitted">At each of the 1440 minutes, the next permitted one of the day, itself counted; 1440: none.</param>
/// <param name="NextForbidden">The same for forbidden ones.</param>
internal sealed record StretchDay(AirDay Air, double[] Metal, short[] NextPermitted, short[] NextForbidden);
