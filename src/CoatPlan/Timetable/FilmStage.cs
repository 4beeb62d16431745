namespace CoatPlan.Timetable;

/// <summary>What a wait between two steps waits for. Names of the drying stages follow ASTM D1640.</summary>
public enum FilmStage
{
    /// <summary>The earlier step is finished, and what it left has dried off.</summary>
    Done,

    /// <summary>The film takes no dust.</summary>
    Dust,

    /// <summary>The film can be touched.</summary>
    Touch,

    /// <summary>A clean mask edge may lie on the film.</summary>
    Tape,

    /// <summary>The recoat window is open.</summary>
    Recoat,

    /// <summary>The piece can be handled.</summary>
    Handle,

    /// <summary>The film is dry through.</summary>
    Through,
}
