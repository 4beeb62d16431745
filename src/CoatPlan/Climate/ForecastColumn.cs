namespace CoatPlan.Climate;

/// <summary>What a column of a forecast holds.</summary>
internal enum ForecastColumn
{
    /// <summary>Local date and time.</summary>
    Time,

    /// <summary>Air temperature.</summary>
    Air,

    /// <summary>Relative humidity.</summary>
    Humidity,

    /// <summary>Dew point.</summary>
    DewPoint,

    /// <summary>Wind.</summary>
    Wind,

    /// <summary>Rain.</summary>
    Rain,
}
