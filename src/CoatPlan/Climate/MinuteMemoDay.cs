namespace CoatPlan.Climate;

/// <summary>What has been answered of a day.</summary>
/// <param name="Air">The air it is about.</param>
/// <param name="Metal">The surface it is about.</param>
/// <param name="Answers">At each minute: not asked yet, permitted, forbidden.</param>
internal sealed record MinuteMemoDay(AirDay Air, double[] Metal, byte[] Answers);
