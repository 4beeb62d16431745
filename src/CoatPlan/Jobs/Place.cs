using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>The place of work, its air and its weather.</summary>
public sealed record Place
{
    /// <summary>The volume of air, from <c>room</c> or <c>volume</c>; null outdoors.</summary>
    public Volume? Volume { get; init; }

    /// <summary>Length, width and height as given; null where a volume was given, and outdoors.</summary>
    public RoomSize? Room { get; init; }

    /// <summary>Whether the work is done outdoors.</summary>
    public bool Outdoors { get; init; }

    /// <summary>Air led outdoors while vapour is present; zero: none.</summary>
    public VolumeFlow Exhaust { get; init; } = VolumeFlow.Zero;

    /// <summary>Mixing factor K, from 1 (perfect) to 10.</summary>
    public double Mixing { get; init; } = JobDefaults.Mixing;

    /// <summary>Least air temperature that a heater keeps; null: no heater.</summary>
    public Temperature? Hold { get; init; }

    /// <summary>What the heater does while vapour is in the air.</summary>
    public HeaterKind Heater { get; init; } = HeaterKind.Open;

    /// <summary>Time constant with which the air falls toward the weather once the heater is off.</summary>
    public Duration CoolsIn { get; init; } = JobDefaults.CoolsIn;

    /// <summary>Batches that can be sprayed at once, 1 or more.</summary>
    public int SpraySpots { get; init; } = JobDefaults.SpraySpots;

    /// <summary>Pieces that can hang or lie wet, 1 or more; null: unlimited.</summary>
    public int? Rack { get; init; }

    /// <summary>What could light vapour here, as the person wrote it.</summary>
    public ImmutableArray<string> Ignition { get; init; } = [];

    /// <summary>The air in the work place without the heater.</summary>
    public required Weather Weather { get; init; }

    /// <summary>Where it stands in the job file.</summary>
    public Mark Mark { get; init; }
}
