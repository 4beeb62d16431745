using System.Collections.Concurrent;
using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Timetable;

/// <summary>The air around any set of a job's surfaces; sets that follow the air alike share one answer.</summary>
internal sealed class AirAround
{
    private readonly PlaceClimate climate;
    private readonly double slowness;
    private readonly ImmutableDictionary<string, Duration> lags;
    private readonly ConcurrentDictionary<string, SurfaceAir> known = new(StringComparer.Ordinal);

    /// <summary>The air around a job's surfaces.</summary>
    /// <param name="climate">The work place.</param>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="slowness">How much longer every film takes than it should, 1 or more.</param>
    public AirAround(PlaceClimate climate, Job job, Catalogue catalogue, double slowness = 1)
    {
        this.climate = climate;
        this.slowness = slowness;
        lags = job.Surfaces.ToImmutableDictionary(surface => surface.Id, surface => MetalLag.Of(surface, catalogue, climate.Outdoors), StringComparer.Ordinal);
    }

    /// <summary>The air around surfaces; the air alone where none are named.</summary>
    public SurfaceAir Of(ImmutableArray<string> surfaces)
    {
        var distinct = surfaces.Select(id => lags[id]).Distinct().Order().ToImmutableArray();
        var key = string.Join(' ', distinct.Select(lag => lag.BclCompatibleTicks));
        return known.GetOrAdd(key, _ => new SurfaceAir(climate, [.. distinct.Select(climate.Metal)], slowness));
    }
}
