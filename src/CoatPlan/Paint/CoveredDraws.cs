namespace CoatPlan.Paint;

/// <summary>How many of the draws of a demand each number of packages covers.</summary>
/// <remarks>Packages are counted, not put in order: of thousands of draws two marks are wanted, and demands are whole.</remarks>
internal sealed class CoveredDraws
{
    private readonly int draws;
    private readonly int least;

    // For the least demand and each number after it up to the most, the draws it covers.
    private readonly int[] covered;

    /// <param name="demands">Packages in each draw, one or more.</param>
    public CoveredDraws(int[] demands)
    {
        draws = demands.Length;
        least = demands.Min();
        covered = new int[demands.Max() - least + 1];
        foreach (var demand in demands)
            covered[demand - least]++;
        for (var over = 1; over < covered.Length; over++)
            covered[over] += covered[over - 1];
    }

    /// <summary>The least number of packages that covers a share of the draws.</summary>
    /// <param name="share">0 to 1.</param>
    public int At(double share)
    {
        var wanted = Math.Max(1, WholePackages.For(share * draws));
        var over = 0;
        while (covered[over] < wanted)
            over++;
        return least + over;
    }

    /// <summary>From one package under the low number, and at least one, to the one that covers all draws or stands one over the high number.</summary>
    public ImmutableArray<CoveredShare> Around(int low, int high)
    {
        var shares = ImmutableArray.CreateBuilder<CoveredShare>();
        for (var packages = Math.Max(1, low - 1); packages <= high + 1; packages++)
        {
            var share = packages < least ? 0 : (double)covered[Math.Min(packages - least, covered.Length - 1)] / draws;
            shares.Add(new CoveredShare(packages, share));
            if (share >= 1)
                break;
        }

        return shares.ToImmutable();
    }
}
