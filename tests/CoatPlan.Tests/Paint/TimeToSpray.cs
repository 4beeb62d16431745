using CoatPlan.Jobs;
using CoatPlan.Paint;
using UnitsNet;

namespace CoatPlan.Tests.Paint;

public sealed class TimeToSpray
{
    [Fact]
    public void A_coat_takes_its_area_its_pieces_and_the_rest_between()
    {
        // 1 m² at 8.6 min, 3 min a piece for two pieces, 15 % rest: (8.6 + 6) × 1.15 = 16.79 min.
        var pair = PaintSamples.Panel(0.5) with { Count = 2 };

        PaintSamples.Coats(PaintSamples.Job([pair]), PaintSamples.Label()).All[0].Hands.ShouldBe(Duration.FromSeconds(1007));
    }

    [Fact]
    public void Work_on_the_vehicle_and_around_a_tube_takes_longer()
    {
        var bench = Hands(PaintSamples.Panel(1));

        Hands(PaintSamples.Panel(1) with { Stays = true }).ShouldBeGreaterThan(bench);
        Hands(PaintSamples.Panel(1) with { Form = "tube" }).ShouldBeGreaterThan(bench);
    }

    [Fact]
    public void A_can_that_gives_little_sets_the_pace()
    {
        // A can that covers 0.1 m² takes 10 cans of 340 g for 1 m²: at 1 g/s with the button down 59 % of the time 96 min.
        var thick = PaintSamples.Label() with { Covers = Area.FromSquareMeters(0.1) };

        var hands = PaintSamples.Coats(PaintSamples.Job([PaintSamples.Panel(1)]), thick).All[0].Hands;

        hands.TotalMinutes.ShouldBe(((3401.9 / 0.59 / 60) + 3) * 1.15, 0.1);
    }

    [Fact]
    public void A_batch_adds_the_opening_of_what_it_uses_and_ends_on_a_whole_minute()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(0.5, "a"), PaintSamples.Panel(0.5, "b")]);
        var coats = PaintSamples.Coats(job, PaintSamples.Label());

        var batch = SprayTime.OfBatch(coats.Of(["a", "b"], layer: 1, coat: 1), PaintSamples.Catalogue);

        // Two pieces of 7.3 min and 3 min for the one can, with rest: (14.6 + 3) × 1.15 = 20.24.
        batch.ShouldBe(Duration.FromMinutes(21));
    }

    [Fact]
    public void Passes_lie_half_a_fan_apart()
    {
        var passes = SprayPasses.Of(PaintSamples.Catalogue.Method("aerosol"), PaintSamples.Catalogue.Figures)!;

        passes.Spacing.Inches.ShouldBe(2, 1e-9);
        passes.Across(Length.FromInches(12)).ShouldBe(7);
        SprayPasses.Of(PaintSamples.Catalogue.Method("brush"), PaintSamples.Catalogue.Figures).ShouldBeNull();
    }

    private static Duration Hands(JobSurface surface) => PaintSamples.Coats(PaintSamples.Job([surface]), PaintSamples.Label()).All[0].Hands;
}
