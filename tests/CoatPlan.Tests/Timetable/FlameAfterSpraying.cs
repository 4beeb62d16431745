using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Tests.Paint;
using CoatPlan.Tests.Vapour;
using CoatPlan.Timetable;
using UnitsNet;

namespace CoatPlan.Tests.Timetable;

/// <summary>
/// How long after dry to touch a flame waits: K · V/Q · ln(Σ C/limit). 500 g of 100 g/mol in 100 m³ are 1,222.5 ppm, 12.225 times a limit of 100; 20 m³/min leave, so that
/// five times V/Q are 25 min.
/// </summary>
public class FlameAfterSpraying
{
    private static readonly Place Garage = PaintSamples.Job([PaintSamples.Panel(1)]).Place with { Mixing = 5 };

    /// <summary>25 × ln 12.225 = 62.6 and 25 × ln 24.45 = 79.9; ten changes of air would be 50 min for either.</summary>
    [Theory]
    [InlineData(1, 63)]
    [InlineData(2, 80)]
    public void It_waits_until_the_vapour_of_every_coat_together_would_be_cleared(int coats, int minutes) =>
        Clearing(Garage, coats, grams: 500).ShouldBe(minutes);

    /// <summary>40 g are 0.978 of the limit.</summary>
    [Fact]
    public void It_need_not_wait_for_less_vapour_than_the_limit() =>
        Clearing(Garage, coats: 1, grams: 40).ShouldBe(0);

    [Fact]
    public void Outdoors_it_waits_for_the_film_alone() =>
        Clearing(Garage with { Volume = null, Outdoors = true }, coats: 2, grams: 500).ShouldBe(0);

    private static int Clearing(Place place, int coats, double grams)
    {
        var label = PaintSamples.Label() with { Solvents = [new SolventContent(VapourSamples.Solvent(), Ratio.FromPercent(100))] };
        var coat = new CoatTask(1, 1, 1, label, ["panel"], Duration.FromMinutes(5), null, Mass.FromGrams(grams)) { HandsOnPieces = Duration.FromMinutes(5), Packages = 1 };
        return PurgeTimes.ClearingMinutes(PaintSamples.Job([PaintSamples.Panel(1)]) with { Place = place }, Enumerable.Repeat(coat, coats), PaintSamples.Catalogue);
    }
}
