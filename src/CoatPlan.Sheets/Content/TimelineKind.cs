namespace CoatPlan.Sheets.Content;

/// <summary>What a stretch on the timeline is.</summary>
public enum TimelineKind
{
    /// <summary>Work with the hands that puts neither dust nor spray into the air.</summary>
    Hands,

    /// <summary>Work that makes dust.</summary>
    Dust,

    /// <summary>Spraying.</summary>
    Spray,

    /// <summary>What dries or settles by itself.</summary>
    Wait,

    /// <summary>When a coat may start: its end is the last start that still meets windows, light and dew.</summary>
    Window,
}
