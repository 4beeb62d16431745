using CoatPlan.Jobs;
using CoatPlan.Paint;
using CsCheck;
using UnitsNet;

namespace CoatPlan.Tests.Paint;

public sealed class CansToBuy
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(3, 3)]
    [InlineData(3 + 1e-10, 3)]
    [InlineData(3 + 1e-8, 4)]
    [InlineData(3 - 1e-10, 3)]
    [InlineData(0.001, 1)]
    public void A_demand_is_covered_by_the_next_whole_number(double demand, int packages) =>
        WholePackages.For(demand).ShouldBe(packages);

    [Fact]
    public void Two_coats_on_two_square_metres_take_four_cans_and_the_reserve_a_fifth()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(2)]);

        var demand = PaintSamples.Demand(job);

        demand.AreaCoats.SquareMeters.ShouldBe(4, 1e-9);
        demand.Likely.ShouldBe(4, 1e-9);
        demand.Basis.ShouldBe(DemandBasis.Covers);
        demand.Cans.ShouldBe(5);
        PaintSamples.Demand(job with { Reserve = Ratio.Zero }).Cans.ShouldBe(4);
    }

    [Fact]
    public void The_way_that_asks_for_more_counts()
    {
        // 430 mL at 12 % in 25.4 µm with 35 % lost cover 1.32 m²: less than a label's 2 m², more than its 1 m².
        var generous = PaintSamples.Label() with { Covers = Area.FromSquareMeters(2) };
        var strict = PaintSamples.Label() with { Covers = Area.FromSquareMeters(1) };
        var job = PaintSamples.Job([PaintSamples.Panel(2)]);

        var bySolids = PaintSamples.Demand(job, generous);

        bySolids.Basis.ShouldBe(DemandBasis.Solids);
        bySolids.ByCovers!.Value.ShouldBe(2, 1e-9);
        bySolids.BySolids!.Value.ShouldBe(bySolids.Likely, 1e-9);
        bySolids.Likely.ShouldBeGreaterThan(2.9);
        PaintSamples.Demand(job, strict).Basis.ShouldBe(DemandBasis.Covers);
    }

    [Fact]
    public void What_sprays_past_a_tube_is_paint_too_and_a_brush_misses_none()
    {
        var tube = PaintSamples.Job([PaintSamples.Panel(2) with { Form = "tube" }]);
        var panel = PaintSamples.Job([PaintSamples.Panel(2)]);
        var brushed = PaintSamples.OneSquareMetreCan with { Method = PaintSamples.Catalogue.Method("brush") };

        (PaintSamples.Demand(tube).Likely / PaintSamples.Demand(panel).Likely).ShouldBe(65.0 / 40, 1e-9);
        PaintSamples.Demand(tube).AreaCoats.ShouldBe(PaintSamples.Demand(panel).AreaCoats);
        PaintSamples.Demand(tube, brushed).Likely.ShouldBe(PaintSamples.Demand(panel, brushed).Likely, 1e-12);
    }

    [Fact]
    public void Surfaces_of_a_product_are_pooled_before_rounding_up()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(0.2, "a"), PaintSamples.Panel(0.2, "b"), PaintSamples.Panel(0.05, "c")]) with { Reserve = Ratio.Zero };

        PaintSamples.Demand(job).Cans.ShouldBe(1);
    }

    [Fact]
    public void Each_station_does_all_the_surfaces()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(1)]);

        PaintSamples.Demand(job with { Crew = job.Crew with { Stations = 6 } }).Likely.ShouldBe(6 * PaintSamples.Demand(job).Likely, 1e-9);
    }

    [Fact]
    public void Where_one_can_does_none_is_not_told_of()
    {
        var demand = PaintSamples.Demand(PaintSamples.Job([PaintSamples.Panel(0.1)]));

        demand.CansLow.ShouldBe(1);
        demand.Covered[0].ShouldBe(new CoveredShare(1, 1));
    }

    [Fact]
    public void The_same_job_draws_the_same_and_low_likely_high_rise()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(4.7)]);

        var demand = PaintSamples.Demand(job);
        var again = PaintSamples.Demand(job);

        demand.Covered.ShouldBe(again.Covered);
        demand.CansLow.ShouldBeLessThanOrEqualTo(demand.Cans);
        demand.Cans.ShouldBeLessThanOrEqualTo(demand.CansHigh);
        demand.Covered.Select(covered => covered.Share).ShouldBeInOrder();
        demand.Covered.First(covered => covered.Packages == demand.CansLow).Share.ShouldBeGreaterThanOrEqualTo(0.1);
        demand.Covered.First(covered => covered.Packages == demand.CansHigh).Share.ShouldBeGreaterThanOrEqualTo(0.9);
    }

    [Fact]
    public void Half_of_even_draws_fall_on_either_side_and_streams_differ()
    {
        var stream = new SeededDraws("a job", "area", "panel");
        var draws = Enumerable.Range(0, 20_000).Select(_ => stream.Around()).ToArray();

        draws.Average().ShouldBe(0, 0.01);
        draws.Select(draw => draw * draw).Average().ShouldBe(1.0 / 6, 0.01);
        draws.ShouldAllBe(draw => draw > -1 && draw < 1);
        new SeededDraws("ab", "c").Even().ShouldNotBe(new SeededDraws("a", "bc").Even());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(403)]
    public void Numbers_drawn_several_at_a_time_are_those_drawn_one_by_one(int count)
    {
        var (one, several) = (new SeededDraws("a job", "area", "panel"), new SeededDraws("a job", "area", "panel"));
        var numbers = new double[count];

        several.Around(numbers);

        numbers.ShouldBe(Enumerable.Range(0, count).Select(_ => one.Around()));
        several.Even().ShouldBe(one.Even());
    }

    [Fact]
    public void The_first_number_of_a_stream_never_changes()
    {
        // Plans are compared byte for byte, so the generator is part of what is promised.
        new SeededDraws("bench panels", "area", "panel").Even().ShouldBe(FirstOf("bench panels", "area", "panel"));

        static double FirstOf(params string[] words)
        {
            var hash = System.Numerics.BigInteger.Parse("14695981039346656037", System.Globalization.CultureInfo.InvariantCulture);
            var whole = System.Numerics.BigInteger.One << 64;
            foreach (var sign in words.SelectMany(word => word + '\uffff'))
                hash = ((hash ^ sign) * 1099511628211) % whole;
            var mixed = (hash + System.Numerics.BigInteger.Parse("11400714819323198485", System.Globalization.CultureInfo.InvariantCulture)) % whole;
            mixed = ((mixed ^ (mixed >> 30)) * System.Numerics.BigInteger.Parse("13787848793156543929", System.Globalization.CultureInfo.InvariantCulture)) % whole;
            mixed = ((mixed ^ (mixed >> 27)) * System.Numerics.BigInteger.Parse("10723151780598845931", System.Globalization.CultureInfo.InvariantCulture)) % whole;
            return (double)((mixed ^ (mixed >> 31)) >> 11) / Math.Pow(2, 53);
        }
    }

    [Fact]
    public void More_area_never_needs_fewer_cans() =>
        Gen.Select(Gen.Double[0.05, 6], Gen.Double[0, 3], Gen.Int[1, 4], Gen.Double[0, 0.5]).Sample(
            (area, more, coats, reserve) =>
            {
                var small = Demand(area);
                var large = Demand(area + more);
                return small.Cans <= large.Cans && small.CansLow <= large.CansLow && small.CansHigh <= large.CansHigh;

                ProductDemand Demand(double squareMetres) => PaintSamples.Demand(
                    PaintSamples.Job([PaintSamples.Panel(squareMetres), PaintSamples.Panel(0.7, "other")], PaintSamples.Layer(coats: coats))
                        with { Reserve = Ratio.FromDecimalFractions(reserve) });
            }, iter: 100);

    [Fact]
    public void Five_small_sessions_are_dearer_than_one()
    {
        var job = PaintSamples.Job([PaintSamples.Panel(0.39)], PaintSamples.Layer(coats: 5)) with { Reserve = Ratio.Zero };

        var together = PaintSamples.Demand(job, Sprayed(job, hoursApart: 0));
        var apart = PaintSamples.Demand(job, Sprayed(job, hoursApart: 24));

        together.Sessions.ShouldBe(1);
        apart.Sessions.ShouldBe(5);
        apart.Covered.First(covered => covered.Packages == 2).Share.ShouldBeLessThan(together.Covered.First(covered => covered.Packages == 2).Share);
    }

    [Fact]
    public void A_two_part_can_past_its_pot_life_is_counted_again()
    {
        var twoPart = PaintSamples.OneSquareMetreCan with { Drying = DryingKind.TwoPart, UseWithin = Duration.FromHours(4) };
        var job = PaintSamples.Job([PaintSamples.Panel(0.2)], PaintSamples.Layer(coats: 2));

        PaintSamples.Demand(job, Sprayed(job, hoursApart: 1), twoPart).Cans.ShouldBe(1);
        PaintSamples.Demand(job, Sprayed(job, hoursApart: 24), twoPart).Cans.ShouldBe(2);
    }

    [Fact]
    public void A_can_that_is_still_in_use_is_not_put_down()
    {
        var gap = (long)PaintSamples.Catalogue.Figures.Time("session-gap").TotalMinutes;
        var job = PaintSamples.Job([PaintSamples.Panel(0.2)], PaintSamples.Layer(coats: 3));

        // A short coat beside the long one ends early; the last begins within the gap after the long one.
        ImmutableArray<SprayedCoat> sprayed = [Minutes(job, 1, 0, 2 * gap), Minutes(job, 2, 10, 20), Minutes(job, 3, (3 * gap) - 1, 3 * gap)];

        PaintSamples.Demand(job, sprayed).Sessions.ShouldBe(1);
    }

    [Fact]
    public void A_coat_that_would_end_past_the_pot_life_takes_a_fresh_can_and_a_can_without_one_lasts()
    {
        var twoPart = PaintSamples.OneSquareMetreCan with { Drying = DryingKind.TwoPart, UseWithin = Duration.FromHours(4) };
        var job = PaintSamples.Job([PaintSamples.Panel(0.2)], PaintSamples.Layer(coats: 2));

        PaintSamples.Demand(job, [Minutes(job, 1, 0, 10), Minutes(job, 2, 229, 239)], twoPart).Cans.ShouldBe(1);
        PaintSamples.Demand(job, [Minutes(job, 1, 0, 10), Minutes(job, 2, 235, 245)], twoPart).Cans.ShouldBe(2);
        PaintSamples.Demand(job, Sprayed(job, hoursApart: 24), twoPart with { Drying = DryingKind.Solvent }).Cans.ShouldBe(1);
    }

    [Fact]
    public void Nine_jobs_in_ten_are_covered_as_the_spread_of_the_loss_says()
    {
        var label = PaintSamples.Label() with { Covers = null };
        var job = PaintSamples.Job([PaintSamples.Panel(200) with { Spread = Ratio.Zero }]) with { Reserve = Ratio.Zero };

        var demand = PaintSamples.Demand(job, label);

        // What lands is one and the spread times the sum of two even draws less one, of which a tenth lies under √0.2 − 1; the demand is divided by it.
        var spread = label.Method.LossSpread.DecimalFractions / (1 - label.Loss.DecimalFractions);
        demand.Basis.ShouldBe(DemandBasis.Solids);
        (demand.CansHigh / demand.Likely).ShouldBe(1 / (1 + (spread * (Math.Sqrt(0.2) - 1))), 0.012);
        (demand.CansLow / demand.Likely).ShouldBe(1 / (1 - (spread * (Math.Sqrt(0.2) - 1))), 0.012);
    }

    private static SprayedCoat Minutes(Job job, int coat, long from, long to) =>
        new("black", 1, coat, ["panel"], 1, job.Start.PlusMinutes(from), job.Start.PlusMinutes(to));

    private static ImmutableArray<SprayedCoat> Sprayed(Job job, int hoursApart) =>
    [
        .. Enumerable.Range(0, job.Systems[0].Layers[0].Coats!.Value).Select(i => job.Start.PlusHours(i * hoursApart)).Select((start, i) =>
            new SprayedCoat("black", 1, i + 1, [.. job.Surfaces.Select(surface => surface.Id)], 1, start, start.PlusMinutes(10))),
    ];
}
