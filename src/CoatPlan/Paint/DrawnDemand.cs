using System.Numerics;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Paint;

/// <summary>Packages of one product in many draws of what may turn out differently.</summary>
internal sealed class DrawnDemand
{
    /// <summary>However badly it goes, a package reaches this share of what it should.</summary>
    private const double LeastLanding = 0.05;

    private readonly DrawnStretch landing;
    private readonly double landingSpread;
    private readonly ImmutableArray<DrawnOpening> openings;
    private readonly int[] packages;

    /// <summary>The demand for a product, nothing drawn yet.</summary>
    /// <param name="label">The product.</param>
    /// <param name="sessions">What is sprayed of it from which packages.</param>
    /// <param name="luck">That of the surfaces.</param>
    /// <param name="coversSpread">How far off a label's coverage may be.</param>
    /// <param name="draws">Number of draws, 1 or more.</param>
    public DrawnDemand(Label label, SpraySessions sessions, SurfaceLuck luck, Ratio coversSpread, int draws)
    {
        landing = new DrawnStretch(new SeededDraws(luck.Seed, "landing", label.Key));
        landingSpread = Spread(label, coversSpread);
        openings = [.. sessions.Openings.Select(opening => DrawnOpening.Of(opening, label, luck))];
        packages = new int[draws];
    }

    /// <summary>What was drawn, once every stretch is.</summary>
    public CoveredDraws Drawn => new(packages);

    /// <summary>Draws one stretch: each opening of packages rounds up anew.</summary>
    /// <param name="stretch">Number of the stretch, from 0.</param>
    public void Draw(int stretch)
    {
        var drawn = packages.AsSpan(stretch * DrawnStretch.Length);
        Span<double> demand = stackalloc double[DrawnStretch.Length];
        foreach (var opening in openings)
        {
            demand.Clear();
            foreach (var surface in opening.Surfaces)
                Add(demand, surface.Likely, surface.Spread, surface.Luck.Of(stretch));
            Land(demand, landing.Of(stretch), opening.Clearing);
            for (var i = 0; i < Math.Min(drawn.Length, demand.Length); i++)
                drawn[i] += WholePackages.For(demand[i]);
        }
    }

    // Both loops take several draws at a time; each comes to the same number as it would alone.
    private static void Add(Span<double> demand, double likely, double spread, ReadOnlySpan<double> off)
    {
        for (var i = 0; i < demand.Length; i += Vector<double>.Count)
        {
            var more = likely * (Vector<double>.One + (spread * new Vector<double>(off[i..])));
            (new Vector<double>(demand[i..]) + more).CopyTo(demand[i..]);
        }
    }

    /// <summary>Makes what would be needed if all landed as likely into what is needed as it lands, and clears the nozzle.</summary>
    private void Land(Span<double> demand, ReadOnlySpan<double> off, double clearing)
    {
        for (var i = 0; i < demand.Length; i += Vector<double>.Count)
        {
            var reach = Vector.Max(new Vector<double>(LeastLanding), Vector<double>.One + (landingSpread * new Vector<double>(off[i..])));
            ((new Vector<double>(demand[i..]) / reach) + new Vector<double>(clearing)).CopyTo(demand[i..]);
        }
    }

    /// <summary>By the label's coverage as labels go; by solids, what the share that lands may vary.</summary>
    private static double Spread(Label label, Ratio coversSpread) => PackageReach.Of(label).Basis == DemandBasis.Covers
        ? coversSpread.DecimalFractions
        : label.Method.LossSpread.DecimalFractions / (1 - label.Loss.DecimalFractions);
}
