using System.Collections.Concurrent;
using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Timetable;

/// <summary>The air around any set of a job's surfaces, for one plan of it; sets that follow the air alike share one answer.</summary>
internal sealed class AirAround
{
    private readonly SurfaceAirs airs;

    // How late pieces follow the air, each once, in order, and which of them each surface does.
    private readonly ImmutableArray<Duration> lags;
    private readonly Dictionary<string, int> lagOf;

    // Asked for at every link that is drawn and every step that is dated, with the few lists of a plan.
    private readonly ConcurrentDictionary<ImmutableArray<string>, SurfaceAir> known = new();

    /// <summary>The air around a job's surfaces.</summary>
    /// <param name="airs">That of the place.</param>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">What the trade knows.</param>
    public AirAround(SurfaceAirs airs, Job job, Catalogue catalogue)
    {
        this.airs = airs;
        var bySurface = job.Surfaces.ToDictionary(surface => surface.Id, surface => MetalLag.Of(surface, catalogue, Climate.Outdoors), StringComparer.Ordinal);
        lags = [.. bySurface.Values.Distinct().Order()];
        lagOf = bySurface.ToDictionary(pair => pair.Key, pair => lags.BinarySearch(pair.Value), StringComparer.Ordinal);
    }

    /// <summary>The work place.</summary>
    public PlaceClimate Climate => airs.Climate;

    /// <summary>From a minute to the first at or after it from which it does not rain on the work for so long; null where no rain falls on it.</summary>
    public Func<int, int?>? DryStarts(int minutes) => airs.DryStarts(minutes);

    /// <summary>The air around surfaces; the air alone where none are named.</summary>
    public SurfaceAir Of(ImmutableArray<string> surfaces) => known.GetOrAdd(surfaces, static (asked, air) => air.airs.Of(air.LagsOf(asked)), this);

    private ImmutableArray<Duration> LagsOf(ImmutableArray<string> surfaces)
    {
        var has = new bool[lags.Length];
        foreach (var surface in surfaces)
            has[lagOf[surface]] = true;

        var own = ImmutableArray.CreateBuilder<Duration>();
        for (var i = 0; i < has.Length; i++)
        {
            if (has[i])
                own.Add(lags[i]);
        }

        return own.ToImmutable();
    }
}
