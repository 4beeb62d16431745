using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>Packages of one product in many draws of what may turn out differently.</summary>
internal static class DrawnDemand
{
    /// <summary>However badly it goes, a package reaches this share of what it should.</summary>
    private const double LeastLanding = 0.05;

    /// <summary>The demand in each draw, packages.</summary>
    public static double[] Of(Label label, SpraySessions sessions, SurfaceLuck luck, Ratio coversSpread)
    {
        var landing = Landing(label, luck, Spread(label, coversSpread));
        var sum = new double[luck.Draws];
        foreach (var opening in sessions.Openings)
        {
            var demand = OfOpening(opening, label, landing, luck);
            var roundsUp = sessions.Openings.Length > 1;
            for (var i = 0; i < sum.Length; i++)
                sum[i] += roundsUp ? WholePackages.For(demand[i]) : demand[i];
        }

        return sum;
    }

    /// <summary>The least demand that covers a share of the draws.</summary>
    public static double At(double[] drawn, double share) => Smallest([.. drawn], Math.Max(0, WholePackages.For(share * drawn.Length) - 1));

    /// <summary>From one package under the low number to the one that covers all draws or stands one over the high number.</summary>
    public static ImmutableArray<CoveredShare> Covered(double[] drawn, int low, int high)
    {
        var covered = ImmutableArray.CreateBuilder<CoveredShare>();
        var first = Math.Max(0, low - 1);
        var needing = new int[Math.Max(0, high + 2 - first)];
        foreach (var demand in drawn)
        {
            if (Math.Max(0, WholePackages.For(demand) - first) is var over && over < needing.Length)
                needing[over]++;
        }

        var enough = 0;
        for (var packages = first; packages <= high + 1; packages++)
        {
            enough += needing[packages - first];
            var share = (double)enough / drawn.Length;
            covered.Add(new CoveredShare(packages, share));
            if (share >= 1)
                break;
        }

        return covered.ToImmutable();
    }

    // The number that would stand at a place if all were in order, by halving towards it: sorting thousands of draws for two of them costs more than drawing them.
    private static double Smallest(double[] values, int place)
    {
        var (low, high) = (0, values.Length - 1);
        while (low < high)
        {
            var pivot = values[low + ((high - low) / 2)];
            var (i, j) = (low, high);
            while (i <= j)
            {
                while (values[i] < pivot)
                    i++;
                while (values[j] > pivot)
                    j--;
                if (i <= j)
                {
                    (values[i], values[j]) = (values[j], values[i]);
                    i++;
                    j--;
                }
            }

            if (place <= j)
                high = j;
            else if (place >= i)
                low = i;
            else
                return values[place];
        }

        return values[low];
    }

    private static double[] OfOpening(SprayOpening opening, Label label, double[] landing, SurfaceLuck luck)
    {
        var demand = new double[luck.Draws];
        foreach (var surface in opening.Coats.GroupBy(coat => coat.Surface))
        {
            var likely = surface.Sum(coat => coat.Packages) * opening.Times;
            var spread = surface.First().On.Surface.Surface.Spread.DecimalFractions;
            var off = luck.Of(surface.Key);
            for (var i = 0; i < demand.Length; i++)
                demand[i] += likely * (1 + (spread * off[i]));
        }

        var clearing = opening.Sessions * label.Method.SetupLoss.DecimalFractions;
        for (var i = 0; i < demand.Length; i++)
            demand[i] = (demand[i] / landing[i]) + clearing;
        return demand;
    }

    /// <summary>How far a package may reach in each draw, over how far it is likely to.</summary>
    private static double[] Landing(Label label, SurfaceLuck luck, double spread)
    {
        var stream = new SeededDraws(luck.Seed, "landing", label.Key);
        var landing = new double[luck.Draws];
        for (var i = 0; i < landing.Length; i++)
            landing[i] = Math.Max(LeastLanding, 1 + (spread * stream.Around()));
        return landing;
    }

    /// <summary>By the label's coverage as labels go; by solids, what the share that lands may vary.</summary>
    private static double Spread(Label label, Ratio coversSpread) => PackageReach.Of(label).Basis == DemandBasis.Covers
        ? coversSpread.DecimalFractions
        : label.Method.LossSpread.DecimalFractions / (1 - label.Loss.DecimalFractions);
}
