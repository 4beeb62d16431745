using CoatPlan.Air;
using CoatPlan.Jobs;
using CoatPlan.Quantities;
using CoatPlan.Tests.Vapour;
using CoatPlan.Vapour;
using CsCheck;
using UnitsNet;

namespace CoatPlan.Tests.Air;

/// <summary>What would bring a passed limit under, each answer held against the room itself.</summary>
public sealed class WhatWouldMendIt
{
    private static readonly LocalDateTime Start = new(2027, 5, 15, 9, 0);

    [Fact]
    public void Air_under_its_limits_needs_no_mending() => Report(100, 20, Dated("a", 0, 10, 5, 5)).Mends.ShouldBeEmpty();

    [Fact]
    public void A_coat_that_is_too_much_is_split_into_the_fewest_goes_that_stay_under_alone()
    {
        // 4 packages of 100 g into 100 m³: all at once 9.8 times the limit of 100 ppm.
        var coat = Dated("a", 0, 20, grams: 400, filmGrams: 0) with { Product = "black", Packages = 4 };

        var mend = Report(100, 20, coat).Mends.ShouldHaveSingleItem();

        var split = mend.AtATime.ShouldHaveSingleItem();
        mend.Code.ShouldBe("over-limit");
        split.Product.ShouldBe("black");
        split.Packages!.Value.ShouldBe(4.0 / split.Goes, 1e-12);
        Alone(split.Goes).ShouldBeLessThan(1);
        Alone(split.Goes - 1).ShouldBeGreaterThanOrEqualTo(1);

        double Alone(int goes) => Report(100, 20, Dated("a", 0, Math.Max(1, 20 / goes), 400.0 / goes, 0)).WorstMixtureRatio;
    }

    [Fact]
    public void The_pause_between_goes_is_the_shortest_that_stays_under()
    {
        var coat = Dated("a", 0, 20, grams: 400, filmGrams: 0) with { Product = "black", Packages = 4 };
        var mend = Report(100, 20, coat).Mends.Single();
        var goes = mend.AtATime[0].Goes;
        var pause = (int)mend.Between!.Value.TotalMinutes;

        Spread(pause).ShouldBeLessThan(1);
        Spread(pause - 1).ShouldBeGreaterThanOrEqualTo(1);

        double Spread(int minutes)
        {
            var each = Math.Max(1, 20 / goes);
            return Report(100, 20, [.. Enumerable.Range(0, goes).Select(i => Dated($"a{i}", i * (each + minutes), each, 400.0 / goes, 0))]).WorstMixtureRatio;
        }
    }

    [Fact]
    public void Two_batches_that_are_under_alone_and_over_together_are_only_kept_apart()
    {
        ImmutableArray<DatedRelease> batches = [Dated("a", 0, 10, 40, 0), Dated("b", 2, 10, 40, 0)];
        Report(100, 20, batches[0]).WorstMixtureRatio.ShouldBeLessThan(1);

        var mend = Report(100, 20, batches).Mends.ShouldHaveSingleItem();

        mend.AtATime.ShouldBeEmpty();
        Apart((int)mend.Between!.Value.TotalMinutes).ShouldBeLessThan(1);
        Apart((int)mend.Between!.Value.TotalMinutes - 1).ShouldBeGreaterThanOrEqualTo(1);

        double Apart(int pause) => Report(100, 20, batches[0], Dated("b", 10 + pause, 10, 40, 0)).WorstMixtureRatio;
    }

    [Fact]
    public void Each_limit_that_is_passed_has_its_own_mend_the_most_pressing_first()
    {
        var deadly = VapourSamples.Solvent() with { Idlh = VapourSamples.Limit(800) };
        var release = new DatedRelease("a", Start, Start.PlusMinutes(10), VapourSamples.Release(deadly, 800, 0)) { Product = "black" };

        var report = WorkAir.Of(Place(100, 20), [release], VapourSamples.Figures);

        report.Mends.Select(mend => mend.Code).ShouldBe(["over-lel", "over-idlh", "over-limit"]);
        report.Mends.Select(mend => mend.Exhaust).ShouldBeInOrder();
        WorkAir.Of(Place(100, report.Mends[1].Exhaust.CubicMetersPerMinute), [release], VapourSamples.Figures)
            .BySolvent[0].Peak.PartsPerMillion.ShouldBeInRange(780, 800);
    }

    [Fact]
    public void The_warning_says_the_figures()
    {
        var coat = Dated("a", 0, 20, grams: 400, filmGrams: 0) with { Product = "black", Packages = 4 };
        var report = Report(100, 20, coat);
        var mend = report.Mends.Single();

        var text = AirWarnings.Of(report, VapourSamples.Figures, QuantityFormat.Metric, key => $"Satin {key}", id => $"Coat {id}").Single().Text;

        text.ShouldContain($"An exhaust of {QuantityFormat.Metric.Flow(mend.Exhaust)} keeps it under");
        text.ShouldContain(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"no more than {mend.AtATime[0].Packages:0.##} of a can of Satin black"));
        text.ShouldContain($"{QuantityFormat.Duration(mend.Between!.Value)} from the end of one to the start of the next");
    }

    [Fact]
    public void Where_nobody_knows_the_packages_the_warning_divides_the_coat()
    {
        var report = Report(100, 20, Dated("a", 0, 20, grams: 400, filmGrams: 0) with { Product = "black" });

        AirWarnings.Of(report, VapourSamples.Figures, QuantityFormat.Metric, key => $"Satin {key}", id => $"Coat {id}").Single().Text
            .ShouldContain($"no more than 1/{report.Mends.Single().AtATime[0].Goes} of the heaviest coat of Satin black in one go");
    }

    // Overlapping wet batches add: the trace of both is the sum of each alone, minute by minute.
    [Fact]
    public void Wet_batches_that_overlap_make_the_sum_of_each_alone() =>
        Gen.Select(Gen.Int[0, 40], Gen.Double[1, 300], Gen.Double[1, 300], Gen.Double[1, 40]).Sample((gap, atOnce, film, exhaust) =>
        {
            var room = new WorkRoom(Volume.FromCubicMeters(80), VolumeFlow.FromCubicMetersPerMinute(exhaust), 4);
            var (first, second) = (Dated("a", 0, 8, atOnce, film), Dated("b", gap, 6, film, atOnce));
            var together = Minutes(AirTrace.Of(room, [first, second], Start));
            var one = Minutes(AirTrace.Of(room, [first], Start));
            var other = Minutes(AirTrace.Of(room, [second], Start));
            // A trace ends where nothing above 0.01 ppm is left, so a sum may be that much off at its end.
            return together.All(pair => Math.Abs(pair.Value - one.GetValueOrDefault(pair.Key) - other.GetValueOrDefault(pair.Key)) < 3e-8);
        }, iter: 60);

    private static Dictionary<int, double> Minutes(AirTrace trace) =>
        trace.Minutes.Select((minute, row) => (minute, row)).ToDictionary(pair => pair.minute, pair => trace.At(pair.row, 0));

    private static Place Place(double cubicMetres, double exhaust) => new()
    {
        Volume = Volume.FromCubicMeters(cubicMetres),
        Exhaust = VolumeFlow.FromCubicMetersPerMinute(exhaust),
        Mixing = 5,
        Weather = new SteadyWeather { Air = Temperature.FromDegreesCelsius(21), Humidity = Ratio.FromPercent(50) },
    };

    private static DatedRelease Dated(string step, int fromMinute, int minutes, double grams, double filmGrams) =>
        new(step, Start.PlusMinutes(fromMinute), Start.PlusMinutes(fromMinute + minutes), VapourSamples.Release(VapourSamples.Solvent(), grams, filmGrams));

    private static AirReport Report(double cubicMetres, double exhaust, params ImmutableArray<DatedRelease> releases) =>
        WorkAir.Of(Place(cubicMetres, exhaust), releases, VapourSamples.Figures);
}
