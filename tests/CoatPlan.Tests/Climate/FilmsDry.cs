using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Tests.Climate;

public class FilmsDry
{
    [Fact]
    public void At_the_labels_own_conditions_every_stage_takes_the_labels_time()
    {
        var metal = Samples.In(Samples.Steady(70, 50)).Metal(Samples.Fender);

        Drying.Reaches(Samples.Black, DryingStage.Touch, metal, 100).ShouldBe(125);
        Drying.Reaches(Samples.Black, DryingStage.Tape, metal, 100).ShouldBe(190);
        Drying.Reaches(Samples.Black, DryingStage.Service, metal, 100).ShouldBe(100 + 7 * 1440);
    }

    /// <summary>10 °C colder, twice the time. Source: trade training note (common practice).</summary>
    [Fact]
    public void Ten_degrees_colder_takes_twice_the_time() =>
        Touch(Samples.Black, Samples.Steady(52, 50)).ShouldBe(50);

    /// <summary>60 °F: 2^(−5.556/10) = 0.6804; 25 min ÷ 0.6804 = 36.75, rounded up.</summary>
    [Fact]
    public void A_wait_is_rounded_up() =>
        Touch(Samples.Black, Samples.Steady(60, 50)).ShouldBe(37);

    [Fact]
    public void Heat_never_promises_less_than_the_label() =>
        Touch(Samples.Black, Samples.Steady(95, 50)).ShouldBe(25);

    [Fact]
    public void Below_the_labels_lowest_temperature_nothing_dries()
    {
        var label = Samples.Black with { Limits = Samples.UsualLimits };

        Touch(label, Samples.Steady(49, 50)).ShouldBeNull();
        Touch(label, Samples.Steady(50, 50)).ShouldBe(55);
    }

    /// <summary>(1 − 0.75)/(1 − 0.50) = half the pace.</summary>
    [Fact]
    public void A_waterborne_film_takes_longer_in_damp_air()
    {
        var label = Samples.Black with { Drying = DryingKind.Waterborne };

        Touch(label, Samples.Steady(70, 75)).ShouldBe(50);
        Touch(label, Samples.Steady(70, 20)).ShouldBe(25);
        Touch(label, Samples.Steady(70, 100)).ShouldBeNull();
    }

    /// <summary>Half the water, half the pace.</summary>
    [Fact]
    public void A_moisture_cured_film_takes_longer_in_dry_air()
    {
        var label = Samples.Black with { Drying = DryingKind.Moisture };

        Touch(label, Samples.Steady(70, 25)).ShouldBe(50);
        Touch(label, Samples.Steady(70, 80)).ShouldBe(25);
    }

    [Fact]
    public void A_solvent_film_does_not_mind_damp_air() =>
        Touch(Samples.Black with { Drying = DryingKind.Solvent }, Samples.Steady(70, 95)).ShouldBe(25);

    [Fact]
    public void A_thicker_film_takes_longer_and_a_thinner_one_no_less()
    {
        var metal = Samples.In(Samples.Steady(70, 50)).Metal(Samples.Fender);

        Touch(4).ShouldBe(25 * 8);
        Touch(0.5).ShouldBe(25);
        Drying.Outwaits(Samples.Black, Duration.FromHours(1), metal, 0, 8).ShouldBe(8 * 60);
        Windows.Opens(Samples.Black, RecoatGap.Itself, 0, metal, 0, 8).ShouldBe(80);
        Should.Throw<ArgumentOutOfRangeException>(() => Touch(0));

        int? Touch(double share) => Drying.Reaches(Samples.Black, DryingStage.Touch, metal, 0, Drying.ThickFilmFactor(share, Samples.Figures));
    }

    /// <summary>50 °F: 60 min, 70 °F: 25 min. Halfway √(60·25) = 38.7; beyond the edges, the edge rows.</summary>
    [Fact]
    public void A_labels_own_table_beats_the_doubling()
    {
        var label = Samples.Black with { TimesAt = [Row(50, 2.4), Row(70, 1), Row(90, 0.6)] };

        Touch(label, Samples.Steady(60, 50)).ShouldBe(39);
        Touch(label, Samples.Steady(40, 50)).ShouldBe(60);
    }

    /// <summary>The row for 90 °F says 15 min. The label says 25 beside it, and heat never promises less than that.</summary>
    [Fact]
    public void A_warm_row_of_a_table_promises_no_less_than_the_label()
    {
        var label = Samples.Black with { TimesAt = [Row(50, 2.4), Row(70, 1), Row(90, 0.6)] };

        Touch(label, Samples.Steady(80, 50)).ShouldBe(25);
        Touch(label, Samples.Steady(90, 50)).ShouldBe(25);
        Touch(label, Samples.Steady(110, 50)).ShouldBe(25);
    }

    /// <summary>
    /// The warm row says nothing of this wait, so it stays an hour there, as at the label's 70 °F. At 60 °F, a quarter of the way from 50 °F: 144^¾ × 60^¼ = 115.7 min.
    /// </summary>
    [Fact]
    public void A_warm_row_does_not_shorten_a_wait_that_it_does_not_name()
    {
        var label = Samples.Black with { TimesAt = [Row(50, 2.4), Row(90, 0.6)] };

        Drying.Outwaits(label, Duration.FromHours(1), Samples.In(Samples.Steady(60, 50)).Metal(Samples.Fender), 0).ShouldBe(116);
        Drying.Outwaits(label, Duration.FromHours(1), Samples.In(Samples.Steady(90, 50)).Metal(Samples.Fender), 0).ShouldBe(60);
    }

    [Fact]
    public void Any_other_wait_runs_at_the_pace_of_the_film()
    {
        var label = Samples.Black with { TimesAt = [Row(50, 2.4), Row(70, 1)] };
        var (hour, cold) = (Duration.FromHours(1), Samples.In(Samples.Steady(52, 50)).Metal(Samples.Fender));

        Drying.Outwaits(Samples.Black, hour, cold, 0).ShouldBe(120);
        Drying.Outwaits(label, hour, Samples.In(Samples.Steady(50, 50)).Metal(Samples.Fender), 0).ShouldBe(144);
        Should.Throw<ArgumentOutOfRangeException>(() => Drying.Outwaits(label, -hour, cold, 0));
    }

    [Fact]
    public void What_was_sprayed_before_the_start_goes_on_at_the_pace_of_the_start()
    {
        var metal = Samples.In(Samples.Steady(52, 50)).Metal(Samples.Fender);

        Drying.Reaches(Samples.Black, DryingStage.Touch, metal, -20).ShouldBe(30);
        Drying.Reaches(Samples.Black, DryingStage.Touch, metal, -120).ShouldBe(-70);
    }

    /// <summary>Two hours at 70 °F and 50 %; the gap to saturation sets the pace, not warmth: at 75 % half of it is left.</summary>
    [Fact]
    public void A_washed_part_dries_as_fast_as_the_air_takes_up_water()
    {
        Dry(70, 50).ShouldBe(120);
        Dry(70, 75).ShouldBe(240);
        Dry(90, 50).ShouldBe(120);
        Dry(50, 100).ShouldBeNull();

        int? Dry(double fahrenheit, double percent) =>
            WashDrying.Dries(Samples.In(Samples.Steady(fahrenheit, percent)).Metal(Samples.Fender), 0, Duration.FromHours(2));
    }

    [Fact]
    public void The_flash_of_a_wipe_doubles_for_ten_degrees_less()
    {
        WipeFlash.Reaches(Samples.In(Samples.Steady(52, 50)).Metal(Samples.Fender), 7, Samples.Figures).ShouldBe(27);
        WipeFlash.Reaches(Samples.In(Samples.Steady(90, 50)).Metal(Samples.Fender), 7, Samples.Figures).ShouldBe(17);
    }

    private static StageTimesAt Row(double fahrenheit, double factor) => new(Samples.Fahrenheit(fahrenheit), Samples.Times(factor), []);

    private static int? Touch(Label label, Weather weather) =>
        Drying.Reaches(label, DryingStage.Touch, Samples.In(weather).Metal(Samples.Fender), 0);
}
