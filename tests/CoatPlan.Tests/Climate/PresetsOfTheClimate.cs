using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Tests.Climate;

public class PresetsOfTheClimate
{
    private static readonly Catalogue BuiltIn = BuiltInPresets.Read();

    [Fact]
    public void The_built_in_figures_are_those_that_tests_count_with()
    {
        var figures = ClimateFigures.Of(BuiltIn);

        (figures with { WindLimit = Samples.Figures.WindLimit }).ShouldBe(Samples.Figures);
        figures.WindLimit.MilesPerHour.ShouldBe(10, 1e-9);
    }

    [Fact]
    public void A_removed_part_has_air_at_both_faces_and_one_that_stays_at_one()
    {
        var removed = Surface("steel", Length.FromMillimeters(1.2));

        Minutes(removed).ShouldBe(4.9, 0.05);
        Minutes(removed with { Stays = true }).ShouldBe(9.8, 0.05);
        MetalLag.Of(removed, BuiltIn, outdoors: true).TotalMinutes.ShouldBe(1.5, 0.05);
    }

    [Fact]
    public void Without_a_gauge_a_part_is_as_thick_as_its_material_usually_is() =>
        Minutes(Surface("cast iron", null) with { Stays = true }).ShouldBe(47, 0.5);

    [Fact]
    public void Pieces_of_one_lag_share_one_curve()
    {
        var climate = Samples.In(Samples.Steady(70, 50));

        climate.Metal(Surface("steel", null), BuiltIn).ShouldBeSameAs(climate.Metal(Surface("steel", Length.FromMillimeters(1)), BuiltIn));
    }

    private static double Minutes(JobSurface surface) => MetalLag.Of(surface, BuiltIn, outdoors: false).TotalMinutes;

    private static JobSurface Surface(string material, Length? gauge) =>
        new() { Id = "a", Name = "A", Material = material, Gauge = gauge, System = "s", Spread = Ratio.FromPercent(15) };
}
