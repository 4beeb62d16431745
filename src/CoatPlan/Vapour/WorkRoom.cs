using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Vapour;

/// <summary>The air space that is worked in.</summary>
/// <param name="Volume">More than zero.</param>
/// <param name="Removal">Air that leaves for outdoors, at least 0: the exhaust, or what leaks where that is more.</param>
/// <param name="Mixing">Mixing factor K, 1 (perfect) to 10: the room clears as if only 1/K of the removed air counted.</param>
public sealed record WorkRoom(Volume Volume, VolumeFlow Removal, double Mixing)
{
    /// <summary>The room of a job; null outdoors, where nothing gathers.</summary>
    /// <remarks>A closed room still leaks: <c>air-leak-per-hour</c> changes of air, which count where the exhaust is less.</remarks>
    /// <param name="place">Where the work is done.</param>
    /// <param name="figures">The leak of a closed room.</param>
    public static WorkRoom? Of(Place place, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(figures);
        return place.Volume is { } volume ? new WorkRoom(volume, Removed(volume, place.Exhaust, figures), place.Mixing) : null;
    }

    /// <summary>Share of the vapour that goes each minute, 1/min: Q / (K·V).</summary>
    public double RatePerMinute => Removal.CubicMetersPerMinute / (Mixing * Volume.CubicMeters);

    private static VolumeFlow Removed(Volume volume, VolumeFlow exhaust, Figures figures)
    {
        var leak = VolumeFlow.FromCubicMetersPerHour(volume.CubicMeters * figures.Number("air-leak-per-hour"));
        return exhaust > leak ? exhaust : leak;
    }
}
