using CoatPlan.Air;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Quantities;
using CoatPlan.Tests.Vapour;
using CoatPlan.Vapour;
using CsCheck;
using UnitsNet;

namespace CoatPlan.Tests.Air;

public sealed class AirOfAPlan
{
    private static readonly LocalDateTime Start = new(2027, 5, 15, 9, 0);

    [Fact]
    public void One_puff_into_a_closed_room_is_its_mass_over_the_volume()
    {
        // 10 g of 100 g/mol at 24.45 L/mol in 24.45 m³: 100 ppm. In one minute the mean is half of that, then the leak (0.5/h over K = 1) sets in.
        var report = Report(Place(24.45, exhaust: 0, mixing: 1), Dated("a", 0, 1, grams: 10, filmGrams: 0));

        report.ByStep[0].Peaks[0].Share.PartsPerMillion.ShouldBe(100, 1);
        report.ByStep[0].MixtureRatio.ShouldBe(1, 0.01);
        report.ByStep[0].LelRatio.ShouldBe(0.01, 1e-4);
    }

    [Fact]
    public void The_purge_agrees_with_the_closed_form()
    {
        // No film, so after the coat nothing feeds the room: t = K·V/Q·ln(C/limit).
        var place = Place(100, exhaust: 20, mixing: 5);
        var report = Report(place, Dated("a", 0, 10, grams: 500, filmGrams: 0));
        // All of it at once would be 500/100 mol × 24.45 L in 100 m³, 12.2 times the limit of 100 ppm; Q/(K·V) is 0.04 a minute.
        var atEnd = 500.0 / 100 * 24.45 / 1000 / 100 / 1e-4 * (1 - Math.Exp(-0.04 * 10)) / (0.04 * 10);

        var closed = PurgeTime.Of(report.Room!, from: atEnd, to: 1)!.Value.TotalMinutes;

        atEnd.ShouldBeGreaterThan(3);
        report.ByStep[0].Purge!.Value.TotalMinutes.ShouldBe(closed, 1);
    }

    /// <summary>A vapour is followed down to 0.01 ppm. At 100 g in 100 m³ it begins at 245 ppm and is still over a limit of 0.005 ppm there.</summary>
    [Theory]
    [InlineData(0.005, false)]
    [InlineData(0.02, true)]
    public void Air_that_is_over_its_limit_as_long_as_it_is_followed_has_no_purge_time(double limitPpm, bool clears)
    {
        var release = new DatedRelease("a", Start, Start.PlusMinutes(5), VapourSamples.Release(VapourSamples.Solvent(limitPpm: limitPpm), 100, 0, filmMinutes: 1));

        var step = WorkAir.Of(Place(100, exhaust: 20, mixing: 1), [release], VapourSamples.Figures).ByStep[0];

        step.Purge.HasValue.ShouldBe(clears);
    }

    [Fact]
    public void A_film_keeps_the_room_busy_after_the_can_is_down()
    {
        var place = Place(100, exhaust: 20, mixing: 5);

        var withFilm = Report(place, Dated("a", 0, 10, grams: 250, filmGrams: 250)).ByStep[0];
        var atOnce = Report(place, Dated("a", 0, 10, grams: 500, filmGrams: 0)).ByStep[0];

        withFilm.Purge!.Value.ShouldBeGreaterThan(atOnce.Purge!.Value);
        withFilm.MixtureRatio.ShouldBeLessThan(atOnce.MixtureRatio);
    }

    [Fact]
    public void A_second_batch_while_the_first_is_wet_adds_to_it()
    {
        var place = Place(100, exhaust: 20, mixing: 5);
        var first = Dated("a", 0, 10, 200, 200);
        var second = Dated("b", 12, 10, 200, 200);

        var together = Report(place, first, second);

        together.ByStep.Single(step => step.Step == "b").MixtureRatio.ShouldBeGreaterThan(Report(place, second).ByStep[0].MixtureRatio);
        together.ByStep.Single(step => step.Step == "a").Purge!.Value.ShouldBeGreaterThan(Report(place, first).ByStep[0].Purge!.Value);
    }

    [Fact]
    public void A_step_a_day_later_starts_with_clean_air()
    {
        var place = Place(100, exhaust: 20, mixing: 5);

        var two = Report(place, Dated("a", 0, 10, 200, 200), Dated("b", 24 * 60, 10, 200, 200));

        two.ByStep[1].MixtureRatio.ShouldBe(two.ByStep[0].MixtureRatio, 1e-6);
        two.ByStep[0].Purge.ShouldBe(two.ByStep[1].Purge);
    }

    [Fact]
    public void Eight_hours_of_steady_vapour_average_to_its_concentration()
    {
        // 480 min of spraying at C∞ = K·G/Q, less the time it takes to fill.
        var place = Place(10, exhaust: 20, mixing: 1);
        var report = Report(place, Dated("a", 0, 480, grams: 1000, filmGrams: 0));

        var steady = Concentration.In(Mass.FromGrams(1000.0 / 480), Thinner, Volume.FromCubicMeters(20)).PartsPerMillion / 100;

        report.ByStep[0].MixtureRatio.ShouldBe(steady, 1e-6);
        report.TwaMixtureRatio.ShouldBe(steady, 0.01 * steady);
        report.DilutionForLimit!.Value.CubicMetersPerMinute.ShouldBe(steady * 20, 1e-6);
    }

    /// <summary>100 g of 100 g/mol are 24.45 L: at 100 ppm 244.5 m³, in 10 minutes 24.45 a minute, and five times that where the air mixes poorly.</summary>
    [Theory]
    [InlineData(1, 24.45)]
    [InlineData(5, 122.25)]
    public void The_textbooks_dilution_grows_with_the_mixing_factor(double mixing, double cubicMetresPerMinute) =>
        Report(Place(100, exhaust: 20, mixing), Dated("a", 0, 10, grams: 100, filmGrams: 0)).DilutionForLimit!.Value.CubicMetersPerMinute
            .ShouldBe(cubicMetresPerMinute, 1e-9);

    [Fact]
    public void The_exhaust_asked_for_is_enough_and_hardly_less_would_be()
    {
        ImmutableArray<DatedRelease> releases = [Dated("a", 0, 10, 300, 200), Dated("b", 20, 10, 300, 200)];
        var report = WorkAir.Of(Place(100, exhaust: 5, mixing: 5), releases, VapourSamples.Figures);
        var needed = report.ExhaustForLimit!.Value.CubicMetersPerMinute;
        var neededForLel = report.ExhaustForLel!.Value.CubicMetersPerMinute;

        Worst(needed).WorstMixtureRatio.ShouldBeLessThan(1);
        Worst(needed * 0.99).WorstMixtureRatio.ShouldBeGreaterThan(1);
        Worst(neededForLel).WorstLelRatio.ShouldBeLessThan(0.1);
        neededForLel.ShouldBeLessThanOrEqualTo(needed);

        AirReport Worst(double exhaust) => WorkAir.Of(Place(100, exhaust, mixing: 5), releases, VapourSamples.Figures);
    }

    [Fact]
    public void The_textbooks_dilution_to_a_tenth_of_the_explosive_limit_stands_beside_the_room()
    {
        // 100 g of 100 g/mol are 24.45 L of vapour; at 1 % and a tenth of it, 0.99 × 24.45 L ÷ 0.01 ÷ 0.1 = 24.2 m³, in 10 minutes 2.42 a minute.
        Report(Place(100, exhaust: 20, mixing: 1), Dated("a", 0, 10, grams: 100, filmGrams: 0)).DilutionForLel!.Value.CubicMetersPerMinute
            .ShouldBe(0.99 * 24.45e-3 / 0.01 / 0.1 / 10, 1e-9);
    }

    [Fact]
    public void A_little_vapour_needs_no_exhaust() =>
        Report(Place(100, exhaust: 0, mixing: 5), Dated("a", 0, 10, 1, 1)).ExhaustForLimit.ShouldBe(VolumeFlow.Zero);

    [Fact]
    public void Outdoors_nothing_gathers()
    {
        var outdoors = Place(100, exhaust: 0, mixing: 5) with { Volume = null, Outdoors = true };

        var report = Report(outdoors, Dated("a", 0, 10, 300, 200));

        report.Room.ShouldBeNull();
        report.ByStep[0].Purge.ShouldBe(Duration.Zero);
        report.ExhaustForLimit.ShouldBeNull();
    }

    [Fact]
    public void A_solvent_without_a_limit_is_named_not_counted_as_nothing()
    {
        var unknown = VapourSamples.Solvent("new thinner", limitPpm: null);
        var release = new DatedRelease("a", Start, Start.PlusMinutes(5), VapourSamples.Release(unknown, 100, 0));

        var report = WorkAir.Of(Place(100, 20, 5), [release], VapourSamples.Figures);

        report.WithoutLimit.ShouldBe(["new thinner"]);
        report.ByStep[0].MixtureRatio.ShouldBe(0);
        report.ByStep[0].Peaks[0].Share.PartsPerMillion.ShouldBeGreaterThan(100);
    }

    [Fact]
    public void Limits_of_minutes_are_held_against_minutes()
    {
        var quick = VapourSamples.Solvent() with { ShortTerm = VapourSamples.Limit(150), Ceiling = VapourSamples.Limit(300) };
        var release = new DatedRelease("a", Start, Start.PlusMinutes(2), VapourSamples.Release(quick, 40, 0));

        // 40 g in 40 m³ are 245 ppm: under the ceiling, and cleared so fast that 15 minutes hold less than 150.
        var report = WorkAir.Of(Place(40, 20, 1), [release], VapourSamples.Figures);
        var slow = WorkAir.Of(Place(40, 1, 1), [release], VapourSamples.Figures);

        report.ShortLimitsPassed.ShouldBeEmpty();
        slow.ShortLimitsPassed.ShouldHaveSingleItem().Over.ShouldBe(Duration.FromMinutes(15));
    }

    [Theory]
    [InlineData(200, true)]
    [InlineData(250, false)]
    public void Air_that_reaches_what_is_immediately_dangerous_is_warned_of(double idlhPpm, bool isWarned)
    {
        // 40 g in 40 m³ are 245 ppm, of which leaks take next to nothing in two minutes.
        var solvent = VapourSamples.Solvent() with { Idlh = VapourSamples.Limit(idlhPpm) };
        var release = new DatedRelease("a", Start, Start.PlusMinutes(2), VapourSamples.Release(solvent, 40, 0));

        var report = WorkAir.Of(Place(40, 0, 1), [release], VapourSamples.Figures);

        AirWarnings.Of(report, VapourSamples.Figures, QuantityFormat.Metric, key => key, step => step).Any(warning => warning.Code == "over-idlh").ShouldBe(isWarned);
    }

    [Fact]
    public void A_closed_room_leaks_as_much_as_half_its_air_an_hour_and_a_weak_fan_adds_nothing()
    {
        // 0.5 changes of air an hour of 60 m³ are 0.5 m³/min.
        WorkRoom.Of(Place(60, exhaust: 0, mixing: 1), VapourSamples.Figures)!.Removal.CubicMetersPerMinute.ShouldBe(0.5, 1e-9);
        WorkRoom.Of(Place(60, exhaust: 0.2, mixing: 1), VapourSamples.Figures)!.Removal.CubicMetersPerMinute.ShouldBe(0.5, 1e-9);
        WorkRoom.Of(Place(60, exhaust: 0.8, mixing: 1), VapourSamples.Figures)!.Removal.CubicMetersPerMinute.ShouldBe(0.8, 1e-9);
    }

    [Fact]
    public void Doubling_the_exhaust_never_raises_a_peak() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[1, 10], Gen.Int[0, 40], Gen.Double[1, 400], Gen.Double[1, 400]).Sample(
            (exhaust, mixing, gap, atOnce, film) =>
            {
                ImmutableArray<DatedRelease> releases = [Dated("a", 0, 8, atOnce, film), Dated("b", gap, 6, film, atOnce)];
                var once = WorkAir.Of(Place(80, exhaust, mixing), releases, VapourSamples.Figures);
                var twice = WorkAir.Of(Place(80, 2 * exhaust, mixing), releases, VapourSamples.Figures);
                return once.ByStep.Zip(twice.ByStep).All(pair => pair.Second.MixtureRatio <= pair.First.MixtureRatio * (1 + 1e-12)
                    && pair.Second.LelRatio <= pair.First.LelRatio * (1 + 1e-12))
                    && twice.TwaMixtureRatio <= once.TwaMixtureRatio * (1 + 1e-12);
            }, iter: 40);

    [Fact]
    public void The_order_in_which_steps_are_told_does_not_matter()
    {
        var place = Place(100, exhaust: 20, mixing: 5);
        var a = Dated("a", 0, 10, 200, 200);
        var b = Dated("b", 12, 10, 200, 200);

        Report(place, b, a).ByStep.Select(step => (step.Step, step.MixtureRatio)).ShouldBe(Report(place, a, b).ByStep.Select(step => (step.Step, step.MixtureRatio)));
    }

    private static Solvent Thinner => VapourSamples.Solvent();

    private static Place Place(double cubicMetres, double exhaust, double mixing) => new()
    {
        Volume = Volume.FromCubicMeters(cubicMetres),
        Exhaust = VolumeFlow.FromCubicMetersPerMinute(exhaust),
        Mixing = mixing,
        Weather = new SteadyWeather { Air = Temperature.FromDegreesCelsius(21), Humidity = Ratio.FromPercent(50) },
    };

    private static DatedRelease Dated(string step, int fromMinute, int minutes, double grams, double filmGrams) =>
        new(step, Start.PlusMinutes(fromMinute), Start.PlusMinutes(fromMinute + minutes), VapourSamples.Release(Thinner, grams, filmGrams));

    private static AirReport Report(Place place, params ImmutableArray<DatedRelease> releases) => WorkAir.Of(place, releases, VapourSamples.Figures);
}
