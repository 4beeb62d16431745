namespace CoatPlan.Climate;

/// <summary>A rule that air, metal or sky must keep from the start of a coat until it can be touched.</summary>
public enum StartRule
{
    /// <summary>The forecast does not reach this far.</summary>
    BeyondForecast,

    /// <summary>Air under the label's range.</summary>
    AirTooCold,

    /// <summary>Air over the label's range.</summary>
    AirTooWarm,

    /// <summary>Metal under the label's range.</summary>
    SurfaceTooCold,

    /// <summary>Metal over the label's range.</summary>
    SurfaceTooWarm,

    /// <summary>Humidity under the label's range.</summary>
    TooDry,

    /// <summary>Humidity over the label's range.</summary>
    TooDamp,

    /// <summary>Metal too little above the dew point.</summary>
    NearDewPoint,

    /// <summary>Outdoors, from an hour before sunset to an hour after sunrise, when metal falls below the air.</summary>
    Night,

    /// <summary>Outdoors, rain.</summary>
    Rain,

    /// <summary>Outdoors while spraying, too much wind.</summary>
    Wind,

    /// <summary>The film would not be dry to touch for as long as drying is followed.</summary>
    NeverDry,
}
