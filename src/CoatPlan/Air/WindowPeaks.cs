using UnitsNet;

namespace CoatPlan.Air;

/// <summary>The highest of each measure over rows of a trace that end together, the first row reached back step by step.</summary>
/// <param name="trace">The trace.</param>
/// <param name="mixture">Σ C/limit in each row.</param>
/// <param name="lel">Σ C/LEL in each row.</param>
/// <param name="last">The row after the last.</param>
internal sealed class WindowPeaks(AirTrace trace, double[] mixture, double[] lel, int last)
{
    private readonly double[] highest = new double[trace.Solvents.Length];
    private int first = last;

    /// <summary>Highest Σ C/limit.</summary>
    public double Mixture { get; private set; }

    /// <summary>Highest Σ C/LEL.</summary>
    public double Lel { get; private set; }

    /// <summary>Takes in the rows from a first one on.</summary>
    public void ReachBackTo(int row)
    {
        while (first > row)
        {
            first--;
            Mixture = Math.Max(Mixture, mixture[first]);
            Lel = Math.Max(Lel, lel[first]);
            for (var i = 0; i < highest.Length; i++)
                highest[i] = Math.Max(highest[i], trace.At(first, i));
        }
    }

    /// <summary>Highest share of each solvent that was there, by name.</summary>
    public ImmutableArray<SolventPeak> Peaks() =>
    [
        .. trace.Solvents.Select((solvent, i) => new SolventPeak(solvent, Ratio.FromDecimalFractions(highest[i])))
            .Where(peak => peak.Share.DecimalFractions > 0),
    ];
}
