using CoatPlan.Climate;
using UnitsNet;

namespace CoatPlan.Tests.Outside;

/// <summary>Lag of metal behind air, against hand-worked values (computed: ρ·c·t ÷ (n·h); h of ISO 6946, 7.7 indoors and 25 outdoors).</summary>
public class ClimateMetalLag
{
    [Theory]
    [InlineData("fender, steel 0.8 mm", 7850, 480, 0.8, 3.3, 6.5, 1.0)]
    [InlineData("apron or bracket, steel 1.2 mm", 7850, 480, 1.2, 4.9, 9.8, 1.5)]
    [InlineData("frame rail, steel 3.5 mm", 7850, 480, 3.5, 14, 29, 4.4)]
    [InlineData("cast iron 6 mm", 7200, 500, 6, 23, 47, 7.2)]
    [InlineData("cast aluminium 5 mm", 2680, 930, 5, 13, 27, 4.2)]
    [InlineData("polyolefin 2.5 mm", 930, 1900, 2.5, 4.8, 9.6, 1.5)]
    public void The_lag_of_a_part_is_the_one_worked_by_hand(
        string part, double density, double heat, double millimetres, double bothIndoors, double oneIndoors, double bothOutdoors)
    {
        Lag(2, 7.7).ShouldBe(bothIndoors, 0.04 * bothIndoors, part);
        Lag(1, 7.7).ShouldBe(oneIndoors, 0.04 * oneIndoors, part);
        Lag(2, 25).ShouldBe(bothOutdoors, 0.06 * bothOutdoors, part);

        double Lag(int faces, double coefficient) => MetalLag.Of(
            Density.FromKilogramsPerCubicMeter(density), SpecificEntropy.FromJoulesPerKilogramKelvin(heat), Length.FromMillimeters(millimetres),
            faces, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(coefficient)).TotalMinutes;
    }
}
