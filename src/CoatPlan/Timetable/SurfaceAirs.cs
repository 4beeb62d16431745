using System.Collections.Concurrent;
using CoatPlan.Climate;

namespace CoatPlan.Timetable;

/// <summary>The air around pieces in one place, by how they follow it: the same for every job that is done there with the same products.</summary>
/// <param name="climate">The work place.</param>
/// <param name="slowness">How much longer every film takes than it should, 1 or more.</param>
internal sealed class SurfaceAirs(PlaceClimate climate, double slowness = 1)
{
    private readonly ConcurrentDictionary<string, SurfaceAir> known = new(StringComparer.Ordinal);

    /// <summary>The work place.</summary>
    public PlaceClimate Climate => climate;

    /// <summary>The air around pieces.</summary>
    /// <param name="lags">Time constants with which they follow the air, each once, in order; none for the air alone.</param>
    public SurfaceAir Of(ImmutableArray<Duration> lags)
    {
        var key = string.Join(' ', lags.Select(lag => lag.BclCompatibleTicks));
        return known.GetOrAdd(key, _ => new SurfaceAir(climate, [.. lags.Select(climate.Metal)], slowness));
    }
}
