using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>One package of a product.</summary>
public sealed record Package
{
    /// <summary>Net mass; null where a volume is given or nothing was said.</summary>
    public Mass? NetMass { get; init; }

    /// <summary>Net volume; null where a mass is given or nothing was said.</summary>
    public Volume? NetVolume { get; init; }

    /// <summary>Price of one package, in the job's currency; null: unknown.</summary>
    public decimal? Price { get; init; }

    /// <summary>Packages sold together; null: not said, sold singly.</summary>
    public int? Pack { get; init; }
}
