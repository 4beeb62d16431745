using System.Numerics;
using CoatPlan.Presets;
using CoatPlan.Vapour;

namespace CoatPlan.Air;

/// <summary>The air minute by minute, as long as something is in it.</summary>
internal sealed class AirTrace
{
    /// <summary>Share of the air under which a vapour counts as gone: 0.01 ppm.</summary>
    private const double Gone = 1e-8;

    /// <summary>A room that does not clear is followed no longer than this after its last coat.</summary>
    private static readonly int Longest = (int)Duration.FromDays(14).TotalMinutes;

    // Minutes on a page: kept short, since one long array of a job's thousands of minutes would have all memory collected for every few plans.
    private const int PageBits = 8;
    private const int PageRows = 1 << PageBits;

    private readonly List<int> minutes = [];
    private readonly List<double[]> pages = [];

    // Rows begin as far apart as numbers are taken together; what is between them stays 0.
    private readonly int stride;

    private AirTrace(ImmutableArray<Solvent> solvents)
    {
        Solvents = solvents;
        stride = (solvents.Length + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
    }

    /// <summary>What is in the air, by name.</summary>
    public ImmutableArray<Solvent> Solvents { get; }

    /// <summary>Minutes in which something is in the air, counted from the start of the count, rising.</summary>
    public IReadOnlyList<int> Minutes => minutes;

    /// <summary>Follows the air of a room.</summary>
    /// <param name="room">The room.</param>
    /// <param name="releases">In the order of their starts.</param>
    /// <param name="zero">The minute that counts as 0, not after the first start.</param>
    public static AirTrace Of(WorkRoom room, ImmutableArray<DatedRelease> releases, LocalDateTime zero)
    {
        var solvents = releases.SelectMany(release => release.Release.Solvents).Select(part => part.Solvent)
            .DistinctBy(solvent => solvent.Name).OrderBy(solvent => solvent.Name, StringComparer.Ordinal).ToImmutableArray();
        var trace = new AirTrace(solvents);
        trace.Follow(new RoomAir(room.RatePerMinute, RoomSources.BySolvent(room, releases, solvents, zero), solvents.Length));
        return trace;
    }

    /// <summary>Mean of a solvent over a minute, share of the air.</summary>
    /// <param name="row">Index into <see cref="Minutes"/>.</param>
    /// <param name="solvent">Index into <see cref="Solvents"/>.</param>
    public double At(int row, int solvent) => Row(row)[solvent];

    /// <summary>Sums over the solvents in each minute, in the order of <see cref="Minutes"/>.</summary>
    /// <param name="parts">For each sum, what a share of a solvent counts, in proportion to the share.</param>
    public double[][] Sums(params ReadOnlySpan<Func<Solvent, double, double>> parts)
    {
        // Asked once for a whole of each solvent, since a job has thousands of minutes.
        var whole = new double[parts.Length][];
        var sums = new double[parts.Length][];
        for (var sum = 0; sum < parts.Length; sum++)
        {
            var part = parts[sum];
            whole[sum] = [.. Solvents.Select(solvent => part(solvent, 1))];
            sums[sum] = new double[minutes.Count];
        }

        for (var row = 0; row < minutes.Count; row++)
        {
            var inAir = Row(row);
            for (var sum = 0; sum < sums.Length; sum++)
            {
                var (counts, total) = (whole[sum], 0.0);
                for (var i = 0; i < counts.Length; i++)
                    total += counts[i] * inAir[i];
                sums[sum][row] = total;
            }
        }

        return sums;
    }

    /// <summary>Highest mean of a measure over some minutes on end; what is not traced counts as nothing.</summary>
    /// <param name="measure">A value for each of <see cref="Minutes"/>.</param>
    /// <param name="window">Minutes to average over, 1 or more.</param>
    public double HighestMean(ReadOnlySpan<double> measure, int window)
    {
        double sum = 0, highest = 0;
        var first = 0;
        for (var row = 0; row < measure.Length; row++)
        {
            sum += measure[row];
            while (minutes[first] <= minutes[row] - window)
                sum -= measure[first++];
            highest = Math.Max(highest, sum);
        }

        return highest / window;
    }

    /// <summary>Highest mean of each solvent over some minutes on end, share of the air, in the order of <see cref="Solvents"/>.</summary>
    /// <param name="window">Minutes to average over, 1 or more.</param>
    public double[] HighestMeans(int window)
    {
        var (sums, highest) = (new double[stride], new double[stride]);
        var first = 0;
        for (var row = 0; row < minutes.Count; row++)
        {
            Add(sums, Padded(row), 1);
            for (; minutes[first] <= minutes[row] - window; first++)
                Add(sums, Padded(first), -1);
            for (var i = 0; i < stride; i += Vector<double>.Count)
                Vector.Max(new Vector<double>(highest, i), new Vector<double>(sums, i)).CopyTo(highest, i);
        }

        return [.. highest.Take(Solvents.Length).Select(most => most / window)];
    }

    // Several solvents at a time; each comes to the same number as it would alone.
    private static void Add(double[] sums, ReadOnlySpan<double> row, double sign)
    {
        for (var i = 0; i < sums.Length; i += Vector<double>.Count)
            (new Vector<double>(sums, i) + (sign * new Vector<double>(row[i..]))).CopyTo(sums, i);
    }

    /// <summary>First row at or after a minute; the number of rows where there is none.</summary>
    public int RowFrom(int minute)
    {
        var found = minutes.BinarySearch(minute);
        return found >= 0 ? found : ~found;
    }

    private void Follow(RoomAir air)
    {
        var idle = 0;
        while (!air.HasNoMoreToCome || (AnythingLeft(air) && idle < Longest))
        {
            if (!air.IsFed && !AnythingLeft(air))
            {
                air.SkipToNextStart();
                continue;
            }

            idle = air.HasNoMoreToCome ? idle + 1 : 0;
            if ((minutes.Count & (PageRows - 1)) == 0)
                pages.Add(new double[PageRows * stride]);
            minutes.Add(air.Now);
            air.Step();
            air.Means.CopyTo(Row(minutes.Count - 1));
        }
    }

    private Span<double> Row(int row) => Padded(row)[..Solvents.Length];

    private Span<double> Padded(int row) => pages[row >> PageBits].AsSpan((row & (PageRows - 1)) * stride, stride);

    private static bool AnythingLeft(RoomAir air)
    {
        foreach (var level in air.Levels)
        {
            if (level > Gone)
                return true;
        }

        return false;
    }
}
