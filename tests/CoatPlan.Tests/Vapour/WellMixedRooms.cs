using CoatPlan.Vapour;
using CsCheck;

namespace CoatPlan.Tests.Vapour;

public sealed class WellMixedRooms
{
    [Fact]
    public void A_steady_source_ends_at_the_closed_form()
    {
        // C∞ = G / (Q/(K·V)): a source of 1/500 a minute for 500 minutes, a twentieth of the air gone each minute.
        var air = new RoomAir(0.05, [Source(minutes: 500, atOnce: 1, film: 0)], 1);

        for (var i = 0; i < 500; i++)
            air.Step();

        air.Levels[0].ShouldBe(1 / 500.0 / 0.05, 1e-12);
        air.Means[0].ShouldBe(1 / 500.0 / 0.05, 1e-12);
    }

    [Fact]
    public void A_room_fills_as_one_minus_e_to_the_minus_air_changes()
    {
        var air = new RoomAir(0.02, [Source(minutes: 100, atOnce: 1, film: 0)], 1);

        for (var i = 0; i < 30; i++)
            air.Step();

        air.Levels[0].ShouldBe(0.01 / 0.02 * (1 - Math.Exp(-0.02 * 30)), 1e-12);
    }

    [Fact]
    public void A_minute_of_many_small_steps_agrees_with_the_exact_one()
    {
        const double rate = 0.4, filmRate = 0.25, steady = 2, fading = 3, start = 5;
        const int parts = 2_000_000;
        double level = start, sum = 0;
        for (var i = 0; i < parts; i++)
        {
            // Midpoint rule, far finer than the answer is asked to.
            var time = (i + 0.5) / parts;
            var middle = level + ((steady + (fading * Math.Exp(-filmRate * time)) - (rate * level)) / parts / 2);
            level += (steady + (fading * Math.Exp(-filmRate * time)) - (rate * middle)) / parts;
            sum += middle / parts;
        }

        var minute = new ExactMinute(rate);
        var end = (start * minute.Kept) + (steady * minute.SteadyEnd) + (fading * minute.FadingEnd(filmRate));
        var mean = (start * minute.KeptMean) + (steady * minute.SteadyMean) + (fading * minute.FadingMean(filmRate));

        end.ShouldBe(level, 1e-9);
        mean.ShouldBe(sum, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e-9)]
    [InlineData(0.0499999)]
    [InlineData(0.05)]
    [InlineData(0.3)]
    public void Slow_rooms_and_rates_alike_lose_no_digits(double rate)
    {
        const double step = 1.0 / 200_000;
        double mean = 0, steady = 0, fading = 0;
        for (var time = step / 2; time < 1; time += step)
        {
            mean += step * Math.Exp(-rate * time);
            steady += step * (1 - time) * Math.Exp(-rate * time);
            fading += step * time * time / 2 * Math.Exp(-rate * time);
        }

        var minute = new ExactMinute(rate);

        minute.KeptMean.ShouldBe(mean, 1e-10);
        minute.SteadyMean.ShouldBe(steady, 1e-10);
        minute.FadingMean(rate).ShouldBe(mean - steady, 1e-10);
        minute.FadingMean(rate + 1.01e-4).ShouldBe(minute.FadingMean(rate + 0.99e-4), 1e-6);
        minute.FadingMean(rate + 1e-4).ShouldBe(minute.FadingMean(rate) - (fading * 1e-4), 1e-8);
    }

    [Fact]
    public void All_that_is_sprayed_leaves_with_the_air()
    {
        var sources = Gen.Select(Gen.Int[0, 60], Gen.Int[1, 30], Gen.Double[0.01, 0.5], Gen.Double[0, 3], Gen.Double[0, 3])
            .Select((first, minutes, filmRate, atOnce, film) => new RoomSource(first, minutes, filmRate, [atOnce], [film]));

        Gen.Select(Gen.Double[0.001, 0.5], sources.Array[1, 4]).Sample((rate, unordered) =>
        {
            ImmutableArray<RoomSource> ordered = [.. unordered.OrderBy(source => source.First)];
            var air = new RoomAir(rate, ordered, 1);
            var left = 0.0;
            while (!air.HasNoMoreToCome)
            {
                air.Step();
                left += rate * air.Means[0];
            }

            var given = ordered.Sum(source => source.AtOnce[0] + source.FromFilm[0]);
            return Math.Abs(left + air.Levels[0] - given) < 1e-6 * (1 + given);
        }, iter: 300);
    }

    [Fact]
    public void Two_batches_make_the_sum_of_each_alone()
    {
        var first = Source(start: 3, minutes: 7, atOnce: 2, film: 1, filmRate: 0.1);
        var second = Source(start: 8, minutes: 4, atOnce: 1, film: 5, filmRate: 0.03);
        var together = Trace([first, second]);
        var alone = Trace([first]).Zip(Trace([second]), (one, other) => one + other).ToArray();

        for (var i = 0; i < together.Length; i++)
            together[i].ShouldBe(alone[i], 1e-12);
        together.Max().ShouldBeGreaterThan(Trace([first]).Max());

        static double[] Trace(ImmutableArray<RoomSource> sources)
        {
            var air = new RoomAir(0.05, sources, 1);
            var means = new double[120];
            while (air.Now < means.Length)
            {
                var now = air.Now;
                air.Step();
                means[now] = air.Means[0];
            }

            return means;
        }
    }

    [Fact]
    public void A_room_is_under_a_value_where_no_minute_followed_one_by_one_reaches_it()
    {
        var sources = Gen.Select(Gen.Int[0, 200], Gen.Int[1, 30], Gen.Int[0, 2].Select(i => i == 0 ? 0.01 : i == 1 ? 0.03 : 0.2), Gen.Double[0.1, 3], Gen.Double[-1, 3].Select(film => Math.Max(0, film)))
            .Select((first, minutes, filmRate, atOnce, film) => new RoomSource(first, minutes, filmRate, [atOnce], [film]));

        Gen.Select(Gen.Double[-0.1, 0.5].Select(rate => Math.Max(0, rate)), sources.Array[1, 6], Gen.Double[0.05, 0.99]).Sample((rate, unordered, share) =>
        {
            ImmutableArray<RoomSource> ordered = [.. unordered.OrderBy(source => source.First)];
            var air = new RoomAir(rate, ordered, 1);
            var highest = 0.0;
            while (!air.HasNoMoreToCome)
            {
                air.Step();
                highest = Math.Max(highest, air.Means[0]);
            }

            MeasuredSource[] measured = [.. ordered.Select(source => new MeasuredSource(source.First, source.Minutes, source.FilmRate, source.AtOnce[0], source.FromFilm[0]))];
            // As near to the highest as the two ways of summing differ, and well away from it.
            return RoomCeiling.KeepsUnder(rate, measured, highest * (1 + 1e-5))
                && !RoomCeiling.KeepsUnder(rate, measured, highest * (1 - 1e-5))
                && RoomCeiling.KeepsUnder(rate, measured, highest / share)
                && !RoomCeiling.KeepsUnder(rate, measured, highest * share);
        }, iter: 2000);
    }

    private static RoomSource Source(int minutes, double atOnce, double film, int start = 0, double filmRate = 0.1) =>
        new(start, minutes, filmRate, [atOnce], [film]);
}
