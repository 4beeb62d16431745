using CoatPlan.Climate;
using CoatPlan.Outlook;
using CoatPlan.Scheduling;
using CoatPlan.Tests.Scheduling;
using CoatPlan.Timetable;
using UnitsNet;

namespace CoatPlan.Tests.Outlook;

/// <summary>Plans carried out under drawn hands, drying and weather.</summary>
public class PlansCarriedOut
{
    private static readonly string Weekend = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "jobs", "roadster-weekend.job.yaml"));

    private static readonly Lazy<ArrangedJob> Arranged = new(() => Planner.Arrange(StartsWorthHaving.Ready(Weekend), SearchDepth.Quick));

    private static readonly ChanceSpreads Usual = ChanceSpreads.Of(Trade.Standard.Catalogue.Figures);

    [Fact]
    public void As_planned_every_draw_finishes_when_the_plan_does()
    {
        var finish = Planner.Work(Arranged.Value).Plan.Finish!.Value;

        var finishes = Drawn(Model(ChanceSpreads.None), 20, 1).Finishes.ToArray();

        finishes.ShouldAllBe(minute => Arranged.Value.Ready.Job.Start.PlusMinutes(minute) == finish);
    }

    [Fact]
    public void Draws_are_the_same_on_one_thread_and_on_two()
    {
        var model = Model(Usual);

        var one = Drawn(model, 90, 1);
        var two = Drawn(model, 90, 2);

        two.Finishes.ToArray().ShouldBe(one.Finishes.ToArray());
        one.Finishes.ToArray().Distinct().Count().ShouldBeGreaterThan(5);
        two.Costs().ShouldBe(one.Costs());
    }

    [Fact]
    public void The_first_draws_are_the_same_however_many_follow()
    {
        var model = Model(Usual);

        var few = Drawn(model, 30).Finishes.ToArray();
        var more = Drawn(model, 60).Finishes.ToArray();

        more[..30].ShouldBe(few);
    }

    [Fact]
    public void A_draw_keeps_every_rule_of_the_network_minute_by_minute()
    {
        var spreads = Usual with { Air = TemperatureDelta.Zero, DewPoint = TemperatureDelta.Zero };
        var (model, job) = (Model(spreads), Arranged.Value.Ready.Job);
        var catalogue = Trade.Standard.Catalogue;
        var climate = PlaceClimate.Of(job.Place, job.Start, ClimateFigures.Of(catalogue));
        var paces = model.Paces.Select(slowness => OtherAir.Of(Arranged.Value.Settled, climate, catalogue, slowness).Network).ToArray();
        var (repair, luck) = (model.In(TemperatureDelta.Zero, TemperatureDelta.Zero), new Luck(model));
        var redone = 0;
        for (var draw = 0; draw < 12; draw++)
        {
            luck.Draw(draw);
            repair.Run(luck.Work, luck.Paces).ShouldNotBe(Repair.Never);
            redone += repair.IsRedone.ToArray().Count(again => again);

            var (network, schedule) = Lived(paces, repair, luck);
            MinuteByMinute.Violations(network, schedule).ShouldBeEmpty($"draw {draw}");
        }

        redone.ShouldBeGreaterThan(0, "what goes stale is part of what is checked");
    }

    // What was done in a draw, with its own minutes and paces; what was done again has no limit any more and made the later work longer.
    private static (Network Network, Schedule Schedule) Lived(Network[] paces, Repair repair, Luck luck)
    {
        var open = paces[0];
        var index = open.Activities.Select((activity, i) => (activity.Id, i)).ToDictionary(pair => pair.Id, pair => pair.i, StringComparer.Ordinal);
        var (placements, decided, added, isRedone) = (repair.Placements.ToArray(), repair.Decided.ToArray(), repair.AddedWork.ToArray(), repair.IsRedone.ToArray());
        int[] done = [.. Enumerable.Range(0, placements.Length).Where(repair.IsDone)];
        int[] speaking =
        [
            .. Enumerable.Range(0, open.Links.Length).Where(l =>
                done.Contains(index[open.Links[l].From]) && done.Contains(index[open.Links[l].To]) && !open.Links[l].Unless.Any(id => repair.IsDone(index[id]))),
        ];
        var again = speaking.Where(l => isRedone[l]).Select(l => open.Links[l].From).ToHashSet(StringComparer.Ordinal);
        var network = open with
        {
            Activities =
            [
                .. done.Select(i => open.Activities[i] with { Work = luck.Work[i] + added[i], Presences = paces[luck.Paces[i]].Activities[i].Presences }),
            ],
            Links =
            [
                .. speaking.Select(l =>
                {
                    var window = paces[luck.Paces[index[open.Links[l].From]]].Links[l].Windows[decided[l]];
                    return new Link(open.Links[l].From, open.Links[l].To, [again.Contains(open.Links[l].From) ? new Window(window.Least) : new Window(window.Least, window.Most)]);
                }),
            ],
            Holds = [.. open.Holds.Select((hold, h) => paces[luck.Paces[index[hold.UntilActivity]]].Holds[h])],
        };
        return (network, new Schedule([.. done.Select(i => placements[i])], [.. speaking.Select(_ => 0)]));
    }

    private static ChanceDraws Drawn(ChanceModel model, int draws, int cores = -1) =>
        ChanceDraws.Of(model, draws, withCosts: true, null, cores, TestContext.Current.CancellationToken);

    private static ChanceModel Model(ChanceSpreads spreads) => new(Arranged.Value.Settled, Trade.Standard.Catalogue, null, spreads);
}
