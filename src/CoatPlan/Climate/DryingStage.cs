namespace CoatPlan.Climate;

/// <summary>How far a film has come, earliest first.</summary>
public enum DryingStage
{
    /// <summary>Dust no longer sticks.</summary>
    Dust,

    /// <summary>It can be touched.</summary>
    Touch,

    /// <summary>A clean mask edge may lie on it.</summary>
    Tape,

    /// <summary>The part can be moved and hung.</summary>
    Handle,

    /// <summary>It is hard through.</summary>
    Through,

    /// <summary>It takes what the engine bay does to it.</summary>
    Service,
}
