namespace CoatPlan.Timetable;

/// <summary>Stages of the work that the timetable tells apart; the presets' operations name them all.</summary>
internal static class Stages
{
    /// <summary>Coats and what stands between them.</summary>
    public const int Coat = 7;

    /// <summary>Closing up: from here on nothing else is left to do.</summary>
    public const int Closing = 9;
}
