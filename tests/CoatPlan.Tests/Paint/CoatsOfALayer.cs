using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Tests.Paint;

public sealed class CoatsOfALayer
{
    [Theory]
    [InlineData(null, null, 2)]
    [InlineData(3, null, 3)]
    [InlineData(5, null, 5)]
    [InlineData(1, null, 2)]
    [InlineData(2, 3, 3)]
    [InlineData(2, 9, 3)]
    [InlineData(5, 9, 5)]
    public void The_largest_demand_counts_and_the_label_bounds_what_hiding_adds(int? byJob, int? forHiding, int coats) =>
        CoatsAsked.Of(byJob, labelLeast: 2, labelMost: 3, forHiding).Coats.ShouldBe(coats);

    [Fact]
    public void Past_the_label_is_planned_as_asked_and_said()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(1)], PaintSamples.Layer(coats: 5));

        var coats = PaintSamples.Coats(job, PaintSamples.Label());

        coats.All.Length.ShouldBe(5);
        coats.Warnings.ShouldHaveSingleItem().Code.ShouldBe("past-label-coats");
    }

    [Fact]
    public void Fewer_than_the_label_wants_is_raised_and_said()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(1)], PaintSamples.Layer(coats: 1));

        var coats = PaintSamples.Coats(job, PaintSamples.Label());

        coats.All.Length.ShouldBe(2);
        coats.Warnings.ShouldHaveSingleItem().Code.ShouldBe("too-few-coats");
    }

    [Fact]
    public void A_translucent_white_over_black_takes_more_coats_and_says_when_the_label_stops_it()
    {
        var black = PaintSamples.Panel(1) with { Lightness = new Lightness { LStar = 5 } };
        var white = PaintSamples.Label() with { Lightness = 95, Hiding = 0.6 };

        var coats = PaintSamples.Coats(PaintSamples.Job([black], PaintSamples.Layer(coats: 2)), white);

        coats.All.Length.ShouldBe(white.CoatsMost);
        coats.Warnings.ShouldHaveSingleItem().Text.ShouldContain("old colour may show");
    }

    [Fact]
    public void A_mist_coat_goes_first_counts_half_and_takes_half_the_paint()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(1)], PaintSamples.Layer() with { Mist = true });

        var coats = PaintSamples.Coats(job).All;

        coats.Select(coat => coat.Coat).ShouldBe([0, 1, 2]);
        coats[0].AreaCoats.SquareMeters.ShouldBe(0.5, 1e-12);
        coats[0].Packages.ShouldBe(coats[1].Packages / 2, 1e-12);
        coats[0].Hands.ShouldBeLessThan(coats[1].Hands);
    }

    [Fact]
    public void Bare_spots_alone_take_their_share_and_a_whole_film_takes_none()
    {
        var spots = PaintSamples.Panel(2) with { BareShare = Ratio.FromPercent(25) };
        var whole = PaintSamples.Panel(2, "whole") with { BareShare = Ratio.Zero };
        var job = PaintSamples.Job([spots, whole], PaintSamples.Layer(coats: 2) with { OnlyBare = true });

        var coats = PaintSamples.Coats(job).All;

        coats.ShouldAllBe(coat => coat.Surface == "panel");
        coats[0].AreaCoats.SquareMeters.ShouldBe(0.5, 1e-12);
    }

    [Fact]
    public void A_thick_coat_runs_on_an_upright_face_and_lies_on_a_level_one()
    {
        var thick = PaintSamples.Label() with { DryFilm = Length.FromMils(3) };
        var upright = PaintSamples.Panel(1) with { Faces = FaceDirection.Vertical };
        var level = PaintSamples.Panel(1) with { Faces = FaceDirection.Level };

        PaintSamples.Coats(PaintSamples.Job([upright]), thick).Warnings.Select(warning => warning.Code).ShouldBe(["too-thick-on-vertical"]);
        PaintSamples.Coats(PaintSamples.Job([PaintSamples.Panel(1) with { Faces = FaceDirection.Mixed }]), thick).Warnings.Select(warning => warning.Code).ShouldBe(["too-thick-on-vertical"]);
        PaintSamples.Coats(PaintSamples.Job([level]), thick).Warnings.ShouldBeEmpty();
        PaintSamples.Coats(PaintSamples.Job([upright]), PaintSamples.Label()).Warnings.ShouldBeEmpty();
    }

    [Fact]
    public void The_wet_film_counts_solids_without_the_propellant()
    {
        // 25.4 µm dry at 12 % by volume of everything; propane 17 % / 0.5 kg/L and butane 9 % / 0.579 kg/L of 0.79 kg/L are 39 % of the volume.
        var wet = WetFilm.OnThePart(PaintSamples.Label());

        wet!.Value.Micrometers.ShouldBe(25.4 * (1 - (0.79 * ((0.17 / 0.5) + (0.09 / 0.579)))) / 0.12, 1e-6);
    }

    [Fact]
    public void A_primer_under_the_colour_need_not_hide()
    {
        var black = PaintSamples.Panel(1) with { Lightness = new Lightness { LStar = 5 } };
        var primer = PaintSamples.Label("etch-primer-aerosol", "etch") with { Lightness = 60, Hiding = 0.3, MustHide = true };
        var job = PaintSamples.Job([black], PaintSamples.Layer("etch", coats: 1), PaintSamples.Layer(coats: 2));

        PaintSamples.Coats(job, primer, PaintSamples.Label()).Layers.Select(layer => layer.Coats.Coats).ShouldBe([1, 2]);
    }

    [Fact]
    public void Spots_of_primer_leave_the_old_colour_to_be_hidden_and_spots_of_colour_are_not_what_is_seen()
    {
        var black = PaintSamples.Panel(1) with { Lightness = new Lightness { LStar = 5 }, BareShare = Ratio.FromPercent(25) };
        var white = PaintSamples.Label() with { Lightness = 95, Hiding = 0.6 };
        var primer = PaintSamples.Label("etch-primer-aerosol", "etch") with { Lightness = 95, Hiding = 0.99, MustHide = true };
        var alone = PaintSamples.Coats(PaintSamples.Job([black], PaintSamples.Layer()), white).Layers[0].Coats.ForHiding;

        var overSpots = PaintSamples.Coats(PaintSamples.Job([black], PaintSamples.Layer("etch", coats: 1) with { OnlyBare = true }, PaintSamples.Layer()), primer, white);
        var underSpots = PaintSamples.Coats(PaintSamples.Job([black], PaintSamples.Layer(), PaintSamples.Layer("etch", coats: 1) with { OnlyBare = true }), primer, white);

        alone!.Value.ShouldBeGreaterThan(1);
        overSpots.Layers.Select(layer => layer.Coats.ForHiding).ShouldBe([null, alone]);
        underSpots.Layers.Select(layer => layer.Coats.ForHiding).ShouldBe([alone, null]);
    }

    [Fact]
    public void A_primer_nearer_to_the_colour_is_suggested_where_it_saves_coats()
    {
        var black = PaintSamples.Panel(1) with { Lightness = new Lightness { LStar = 5 } };
        var white = PaintSamples.Label() with { Lightness = 95, Hiding = 0.6 };

        var layer = PaintSamples.Coats(PaintSamples.Job([black], PaintSamples.Layer(coats: 2)), white).Layers[0];

        layer.Primer!.Word.ShouldBe("white");
        layer.Primer.Coats.ShouldBeLessThan(layer.Coats.ForHiding!.Value);
        PaintSamples.Coats(PaintSamples.Job([PaintSamples.Panel(1)])).Layers[0].Primer.ShouldBeNull();
    }

    [Theory]
    [InlineData(300, true)]
    [InlineData(60, false)]
    public void A_weighed_can_says_whether_it_lasts(double gramsLeft, bool lasts)
    {
        // The next coat on 0.5 m² takes half a can of 340 g.
        var weighed = new DoneEntry { Surfaces = ["panel"], Layer = 1, Coat = 1, Cans = new Amount { Mass = Mass.FromGrams(gramsLeft) } };
        var job = PaintSamples.Job([PaintSamples.Panel(0.5)]) with { Done = [weighed] };

        var can = WeighedCan.Of(job, PaintSamples.Coats(job)).ShouldHaveSingleItem();

        can.Next.ShouldBe(0.5, 1e-9);
        can.Left.ShouldBe((gramsLeft / 340.19) - 0.02, 1e-4);
        can.Lasts.ShouldBe(lasts);
        WeighedCan.Warnings([can], new Labels([PaintSamples.OneSquareMetreCan])).Select(warning => warning.Code).ShouldBe(lasts ? [] : ["cans-run-out"]);
    }

    [Fact]
    public void A_can_after_the_last_coat_lasts_whatever_is_left()
    {
        var weighed = new DoneEntry { Surfaces = ["panel"], Layer = 1, Coat = 2, Cans = new Amount { Mass = Mass.FromGrams(1) } };
        var job = PaintSamples.Job([PaintSamples.Panel(0.5)]) with { Done = [weighed] };

        WeighedCan.Of(job, PaintSamples.Coats(job)).ShouldHaveSingleItem().Lasts.ShouldBeTrue();
    }
}
