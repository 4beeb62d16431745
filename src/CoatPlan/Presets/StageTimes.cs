namespace CoatPlan.Presets;

/// <summary>When a film reaches each stage after the end of its coat, at the label's conditions.</summary>
/// <param name="Dust">Dust no longer sticks.</param>
/// <param name="Touch">It can be touched.</param>
/// <param name="Tape">A clean mask edge may lie on it.</param>
/// <param name="Handle">The part can be moved and hung.</param>
/// <param name="Through">It is hard through: bolted joints, sanding.</param>
/// <param name="Service">It takes what the engine bay does to it.</param>
public sealed record StageTimes(Duration Dust, Duration Touch, Duration Tape, Duration Handle, Duration Through, Duration Service);
