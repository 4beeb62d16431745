using System.Collections.Concurrent;
using CoatPlan.Climate;
using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>The air around pieces in one place, by how they follow it: the same for every job that is done there with the same products.</summary>
/// <param name="climate">The work place.</param>
/// <param name="slowness">How much longer every film takes than it should, 1 or more.</param>
internal sealed class SurfaceAirs(PlaceClimate climate, double slowness = 1)
{
    private readonly double slowness = slowness;
    private readonly ConcurrentDictionary<ImmutableArray<Duration>, SurfaceAir> known = new(new OneByOne());
    private readonly ConcurrentDictionary<int, Func<int, int?>> dryStarts = [];

    /// <summary>The work place.</summary>
    public PlaceClimate Climate => climate;

    /// <summary>The air around pieces.</summary>
    /// <param name="lags">Time constants with which they follow the air, each once, in order; none for the air alone.</param>
    public SurfaceAir Of(ImmutableArray<Duration> lags) =>
        known.GetOrAdd(lags, static (asked, own) => new SurfaceAir(own.Climate, [.. asked.Select(own.Climate.Metal)], own.slowness), this);

    /// <summary>From a minute to the first at or after it from which it does not rain on the work for so long; null where no rain falls on it.</summary>
    public Func<int, int?>? DryStarts(int minutes) =>
        climate.Outdoors ? dryStarts.GetOrAdd(minutes, static (work, climate) => new RememberedStarts(from => climate.FirstDry(from, work)).From, climate) : null;

    // Lists of the same lags are the same.
    private sealed class OneByOne : IEqualityComparer<ImmutableArray<Duration>>
    {
        public bool Equals(ImmutableArray<Duration> x, ImmutableArray<Duration> y) => x.AsSpan().SequenceEqual(y.AsSpan());

        public int GetHashCode(ImmutableArray<Duration> obj)
        {
            var hash = default(HashCode);
            foreach (var lag in obj)
                hash.Add(lag);
            return hash.ToHashCode();
        }
    }
}
