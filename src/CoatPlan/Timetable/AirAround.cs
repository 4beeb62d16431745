using System.Collections.Concurrent;
using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Timetable;

/// <summary>The air around any set of a job's surfaces, for one plan of it; sets that follow the air alike share one answer.</summary>
internal sealed class AirAround
{
    private readonly SurfaceAirs airs;
    private readonly Dictionary<string, Duration> lags;

    // Asked for at every link that is drawn and every step that is dated, with the few lists of a plan.
    private readonly ConcurrentDictionary<ImmutableArray<string>, SurfaceAir> known = new();

    /// <summary>The air around a job's surfaces.</summary>
    /// <param name="airs">That of the place.</param>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">What the trade knows.</param>
    public AirAround(SurfaceAirs airs, Job job, Catalogue catalogue)
    {
        this.airs = airs;
        lags = job.Surfaces.ToDictionary(surface => surface.Id, surface => MetalLag.Of(surface, catalogue, Climate.Outdoors), StringComparer.Ordinal);
    }

    /// <summary>The work place.</summary>
    public PlaceClimate Climate => airs.Climate;

    /// <summary>The air around surfaces; the air alone where none are named.</summary>
    public SurfaceAir Of(ImmutableArray<string> surfaces) => known.GetOrAdd(
        surfaces, static (asked, air) => air.airs.Of([.. asked.Select(id => air.lags[id]).Distinct().Order()]), this);
}
