using CoatPlan.Presets;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>How much air must leave for a sum over limits to stay under what is allowed.</summary>
internal static class NeededExhaust
{
    /// <summary>The answer is rounded up to this, m³/min.</summary>
    private const double Step = 0.01;

    /// <summary>How much more than the least the answer may be: nothing about a room is known better.</summary>
    private const double Closeness = 0.002;

    /// <summary>
    /// Least exhaust at which the highest one-minute mean stays under a value: found by halving, since more exhaust never raises a peak. Zero where the leak
    /// of the closed room is enough.
    /// </summary>
    /// <param name="leaking">The room with nothing but its leak.</param>
    /// <param name="releases">In the order of their starts.</param>
    /// <param name="part">What a share of a solvent counts in the sum.</param>
    /// <param name="under">More than zero.</param>
    public static VolumeFlow For(WorkRoom leaking, ImmutableArray<DatedRelease> releases, Func<Solvent, double, double> part, double under)
    {
        if (releases.IsEmpty)
            return VolumeFlow.Zero;

        var sources = RoomSources.Summed(leaking, releases, part, releases[0].Start);
        if (IsUnder(leaking, leaking.Removal, sources, under))
            return VolumeFlow.Zero;

        var low = leaking.Removal.CubicMetersPerMinute;
        var high = Math.Max(2 * low, leaking.Volume.CubicMeters / 60);
        while (!IsUnder(leaking, VolumeFlow.FromCubicMetersPerMinute(high), sources, under))
            high *= 2;
        while (high - low > Math.Max(Step, Closeness * high))
        {
            var middle = (low + high) / 2;
            if (IsUnder(leaking, VolumeFlow.FromCubicMetersPerMinute(middle), sources, under))
                high = middle;
            else
                low = middle;
        }

        return VolumeFlow.FromCubicMetersPerMinute(Math.Ceiling(high / Step) * Step);
    }

    private static bool IsUnder(WorkRoom room, VolumeFlow removal, MeasuredSource[] sources, double under) =>
        RoomCeiling.KeepsUnder((room with { Removal = removal }).RatePerMinute, sources, under);
}
