using System.Collections.Concurrent;
using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Timetable;

/// <summary>The air around any set of a job's surfaces; sets that follow the air alike share one answer.</summary>
internal sealed class AirAround
{
    private readonly double slowness;
    private readonly ImmutableDictionary<string, Duration> lags;
    private readonly ConcurrentDictionary<string, SurfaceAir> known;

    // Asked for at every link that is drawn and every step that is dated, with the same few lists.
    private readonly ConcurrentDictionary<ImmutableArray<string>, SurfaceAir> ofSurfaces = new();

    /// <summary>The air around a job's surfaces.</summary>
    /// <param name="climate">The work place.</param>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="slowness">How much longer every film takes than it should, 1 or more.</param>
    public AirAround(PlaceClimate climate, Job job, Catalogue catalogue, double slowness = 1)
        : this(climate, job, catalogue, slowness, new ConcurrentDictionary<string, SurfaceAir>(StringComparer.Ordinal))
    {
    }

    private AirAround(PlaceClimate climate, Job job, Catalogue catalogue, double slowness, ConcurrentDictionary<string, SurfaceAir> known)
    {
        Climate = climate;
        this.slowness = slowness;
        this.known = known;
        lags = job.Surfaces.ToImmutableDictionary(surface => surface.Id, surface => MetalLag.Of(surface, catalogue, climate.Outdoors), StringComparer.Ordinal);
    }

    /// <summary>The work place.</summary>
    public PlaceClimate Climate { get; }

    /// <summary>The same air around the surfaces of another job, which is done in the same place with the same products.</summary>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">What the trade knows.</param>
    public AirAround For(Job job, Catalogue catalogue) => new(Climate, job, catalogue, slowness, known);

    /// <summary>The air around surfaces; the air alone where none are named.</summary>
    public SurfaceAir Of(ImmutableArray<string> surfaces) => ofSurfaces.GetOrAdd(surfaces, static (asked, air) => air.Around(asked), this);

    private SurfaceAir Around(ImmutableArray<string> surfaces)
    {
        var distinct = surfaces.Select(id => lags[id]).Distinct().Order().ToImmutableArray();
        var key = string.Join(' ', distinct.Select(lag => lag.BclCompatibleTicks));
        return known.GetOrAdd(key, _ => new SurfaceAir(Climate, [.. distinct.Select(Climate.Metal)], slowness));
    }
}
