using System.Text.Json.Nodes;

namespace CoatPlan.Tests.Validator;

/// <summary>A valid plan passes; each plan broken by hand breaks the rule that it was broken for, and no other.</summary>
public class BrokenPlanTests
{
    private static readonly Dictionary<string, (string Rule, Func<HandMadeWeekend, HandMadeWeekend> Break)> s_broken = new(StringComparer.Ordinal)
    {
        ["a coat out of its window"] = (Rules.OutOfWindow, plan => plan.Forget("a-black-2").Move("a-black-2", "11:51", "11:57")
            .Set("a-black-2", "lastSafeStart", "2027-05-15T11:54:00").SetPlan("inService", "2027-05-17T11:57:00")),
        ["a coat before its window opens"] = (Rules.OutOfWindow, plan => plan.Forget("a-black-2").Move("a-black-2", "11:05", "11:11")),
        ["another product too early over the primer"] = (Rules.OutOfWindow, plan => plan.Forget("a-black-1").Move("a-black-1", "10:40", "10:46")
            .Set("a-black-2", "after", new JsonArray()).Move("a-black-2", "11:06", "11:12")),
        ["a cold garage counted like a warm one"] = (Rules.OutOfWindow, plan => plan.ForJob("air: 70 °F, humidity: 50 %", "air: 52 °F, humidity: 50 %")
            .SetEverywhere("airC", 11.11).SetEverywhere("surfaceC", 11.11).SetEverywhere("dewPointC", 1.1)
            .Move("refit", "2027-05-16T07:00:00", "2027-05-16T07:15:00").Move("put-away", "2027-05-16T07:15:00", "2027-05-16T07:25:00")
            .SetPlan("inService", "2027-05-22T11:24:00")),
        ["dust over a wet film"] = (Rules.DustOverWetFilm, plan => plan.Move("put-away", "11:28", "11:38").Forget("put-away").Set("put-away", "makesDust", true)),
        ["another product sprayed over a wet film"] = (Rules.SprayOverWetFilm, plan => plan.Move("b-grey-1", "10:38", "10:43").Forget("a-black-1").Forget("b-black-1")
            .Move("b-black-1", "11:17", "11:23").Move("b-black-2", "11:34", "11:40").Set("b-black-2", "lastSafeStart", "2027-05-15T11:50:00").SetPlan("inService", "2027-05-17T11:40:00")
            .Move("refit", "14:40", "14:55").Move("put-away", "14:55", "15:05")),
        ["sanding that is said to make no dust"] = (Rules.DustDenied, plan => plan.Set("derust", "makesDust", false)),
        ["two people where there is one"] = (Rules.TooManyPeople, plan => plan.ForJob("people: 2", "people: 1")),
        ["three people where there are two"] = (Rules.TooManyPeople, plan => plan.Set("refit", "people", 3)),
        ["an idle hour that is not told"] = (Rules.IdleDoesNotAddUp, plan => plan.SetPlan("idle", new JsonArray())),
        ["a rest while a coat is in hand"] = (Rules.RestInHand, plan => plan.SetPlan("restPoints", new JsonArray(Rest("a-black-1", "2027-05-15T11:01:00")))),
        ["a rest with the tape on"] = (Rules.RestInHand, plan => plan.SetPlan("restPoints", new JsonArray(Rest("tack", (string)plan.Step("tack")["end"]!)))),
        ["a coat across a closed span"] = (Rules.CoatAcrossBreak, plan => plan.Move("a-black-2", "11:48", "12:02").Set("a-black-2", "handsMin", 14)
            .SetPlan("inService", "2027-05-17T12:02:00")),
        ["work while nobody is there"] = (Rules.OutsideHours, plan => plan.Move("unmask", "12:30", "12:35")),
        ["a break that eats the minutes"] = (Rules.HandsDoNotAddUp, plan => plan.Set("refit", "handsMin", 30)),
        ["unmasked too early"] = (Rules.UnmaskTooEarly, plan => plan.Forget("unmask").Move("unmask", "11:30", "11:35")),
        ["tape over its limit"] = (Rules.TapeTooLong, plan => plan.Forget("unmask").Move("unmask", "2027-05-16T10:00:00", "2027-05-16T10:05:00")),
        ["tape left on for good"] = (Rules.TapeLeftOn, plan => plan.Remove("unmask")),
        ["a coat on a surface that is not masked"] = (Rules.MaskMissing, plan => plan.Remove("mask").Remove("unmask")),
        ["tape laid on a soft film"] = (Rules.TapeOverWetFilm, plan => plan.Set("put-away", "kind", "remask").Set("put-away", "surfaces", new JsonArray("inner-fender"))
            .Forget("put-away").Move("put-away", "11:56", "11:59").Set("put-away", "handsMin", 3)),
        ["a final wipe that is missing"] = (Rules.FinalWipeMissing, plan => plan.Remove("final-wipe")),
        ["a final wipe in the span before"] = (Rules.FinalWipeMissing, plan => plan.ForJob("Sat-Sun: [07:00-12:00, 13:00-18:00]", "Sat-Sun: [03:00-09:00, 10:12-12:00, 13:00-18:00]").ForJob("start: 2027-05-15 08:00", "start: 2027-05-15 06:00").SetPlan("start", "2027-05-15T06:00:00")
            .EarlierByTwoHoursUntilTheWipe().Move("tack", "10:12", "10:13").Set("tack", "handsMin", 1)),
        ["abrasion before the solvent"] = (Rules.SolventCleanMissing, plan => plan.Remove("solvent-clean")),
        ["a coat below the dew margin"] = (Rules.DewMargin, plan => plan.ForJob("humidity: 85 %, above-dew: 3 °C", "humidity: 85 %, above-dew: 12 °C")),
        ["a coat in air too damp"] = (Rules.HumidityLimit, plan => plan.ForJob("humidity: 85 %, above-dew: 3 °C", "humidity: 40-45 %, above-dew: 3 °C")
            .ForJob("humidity: 50 %", "humidity: 47 %").SetEverywhere("humidity", 0.47).SetEverywhere("dewPointC", 9.4)),
        ["a coat in air too cold"] = (Rules.AirLimit, plan => plan.ForJob("air: 50-90 °F", "air: 72-90 °F")),
        ["a coat on metal too cold"] = (Rules.SurfaceLimit, plan => plan.ForJob("surface: 50-90 °F", "surface: 22-30 °C")),
        ["air that is not the job's weather"] = (Rules.WeatherMismatch, plan => plan.Set("mask", "airC", 25.0).Set("mask", "dewPointC", 13.9)),
        ["a dew point that does not follow"] = (Rules.DewPointInconsistent, plan => plan.ForJob("humidity: 50 %}", "humidity: 52 %}").SetEverywhere("dewPointC", 10.75).SetEverywhere("humidity", 0.501)
            .Set("mask", "humidity", 0.538)),
        ["metal warmer than the air ever was"] = (Rules.MetalMismatch, plan => plan.Set("mask", "surfaceC", 24.0)),
        ["coats out of order"] = (Rules.CoatsOutOfOrder, plan => plan.Set("a-black-1", "coat", 2).Set("a-black-2", "coat", 1)),
        ["too few coats"] = (Rules.TooFewCoats, plan => plan.ForJob("product: black, coats: 2", "product: black, coats: 3")),
        ["a coat left out"] = (Rules.CoatMissing, plan => plan.Remove("b-black-1").SetSupply("black", "areaCoatsM2", 18 * 0.09290304).Set("b-black-2", "after", new JsonArray())),
        ["the wrong product"] = (Rules.WrongProduct, plan => plan.ForJob("product: grey, coats: 1", "product: black, coats: 1")),
        ["a mist coat with a number"] = (Rules.MistMismatch, plan => plan.Set("a-grey-1", "mist", true).SetSupply("grey", "areaCoatsM2", 6 * 0.09290304)),
        ["wrong cans"] = (Rules.CansBelowDemand, plan => plan.SetSupply("black", "cans", 1).SetSupply("black", "cansLow", 1).SetSupply("black", "buy", 0).SetSupply("black", "price", 0)),
        ["six cans left over"] = (Rules.CansOverDemand, plan => plan.SetSupply("black", "cans", 8).SetSupply("black", "cansHigh", 8).SetSupply("black", "buy", 7).SetSupply("black", "price", 66.5)),
        ["wrong area-coats"] = (Rules.AreaCoats, plan => plan.SetSupply("black", "areaCoatsM2", 2.1)),
        ["low cans over likely ones"] = (Rules.CansOrder, plan => plan.SetSupply("grey", "cansLow", 2)),
        ["cans bought that stand on the shelf"] = (Rules.Buy, plan => plan.SetSupply("black", "buy", 2).SetSupply("black", "price", 19.0)),
        ["a wrong price"] = (Rules.Price, plan => plan.SetSupply("black", "price", 19.0)),
        ["a product that nobody buys"] = (Rules.SupplyMissing, plan =>
        {
            plan.Plan["supplies"]!.AsArray().RemoveAt(0);
            return plan;
        }),
        ["refitted before it can be handled"] = (Rules.RefitTooEarly, plan => plan.Forget("refit").Move("refit", "14:20", "14:35")),
        ["never refitted"] = (Rules.RefitMissing, plan => plan.Remove("refit")),
        ["more batches than spots"] = (Rules.TooManySpots, plan => plan.Move("b-black-2", "11:14", "11:20")),
        ["more pieces than the rack holds"] = (Rules.RackFull, plan => plan.ForJob("rack: 3", "rack: 1")),
        ["a least wait below the label"] = (Rules.LeastBelowLabel, plan => plan.SetWait("a-black-2", "leastMin", 5)),
        ["another label than the job's"] = (Rules.LabelMismatch, plan => plan.SetWait("unmask", "labelMin", 12).SetWait("unmask", "leastMin", 12)),
        ["a least wait not kept"] = (Rules.WaitedTooLittle, plan => plan.SetWait("put-away", "leastMin", 5)),
        ["a most wait not kept"] = (Rules.WaitedTooLong, plan => plan.SetWait("put-away", "mostMin", 14)),
        ["before the job starts"] = (Rules.BeforeStart, plan => plan.Move("photograph", "07:50", "07:55")),
        ["before now, undone"] = (Rules.BeforeStart, plan => plan.ForJob("tape-limit: 24 h", "as-of: 2027-05-15 08:02\ntape-limit: 24 h")),
        ["the same id twice"] = (Rules.DuplicateId, plan => plan.Set("put-away", "id", "photograph")),
        ["a wait for a step that is not there"] = (Rules.UnknownReference, plan => plan.SetWait("put-away", "step", "nowhere")),
        ["a surface that the job does not have"] = (Rules.UnknownReference, plan => plan.Set("put-away", "surfaces", new JsonArray("firewall"))),
        ["another count than the job's"] = (Rules.SurfaceMismatch, plan => plan.ForJob("relief: 1.0\n    stays: true", "relief: 1.2\n    stays: true")),
        ["an end before its start"] = (Rules.EndsBeforeStart, plan => plan.Set("put-away", "handsMin", 0).Set("put-away", "people", 0).Set("put-away", "end", "2027-05-15T14:40:00").SetPlan("finish", "2027-05-15T14:45:00")),
        ["a step without a reason"] = (Rules.WhyMissing, plan => plan.Set("mask", "why", " ")),
        ["a lower bound after the finish"] = (Rules.LowerBoundAfterFinish, plan => plan.SetPlan("lowerBound", "2027-05-15T15:00:00")),
        ["a finish before the last step"] = (Rules.FinishNotLastEnd, plan => plan.SetPlan("finish", "2027-05-15T14:45:00")),
        ["a finish after its time without a reason"] = (Rules.AfterFinishBy, plan => plan.ForJob("finish-by: 2027-05-16 18:00", "finish-by: 2027-05-15 14:00").SetPlan("finishBy", "2027-05-15T14:00:00")),
        ["in service before the film is"] = (Rules.InServiceTooEarly, plan => plan.SetPlan("inService", "2027-05-16T11:24:00")),
        ["a last safe start before the start"] = (Rules.LastSafeStart, plan => plan.Set("b-black-2", "lastSafeStart", "2027-05-15T11:17:00")),
        ["a last safe start of a refit"] = (Rules.LastSafeStart, plan => plan.Set("refit", "lastSafeStart", "2027-05-15T16:00:00")),
        ["another room"] = (Rules.AirNumbers, plan =>
        {
            plan.Plan["air"]!["roomM3"] = 50.0;
            return plan;
        }),
        ["a coat without its air"] = (Rules.AirStepMissing, plan =>
        {
            plan.Plan["air"]!["byStep"]!.AsArray().RemoveAt(2);
            return plan;
        }),
        ["spraying without a respirator"] = (Rules.RespiratorMissing, plan => plan.SetPlan("respirator", new JsonObject { ["kind"] = "none", ["why"] = new JsonArray("well aired") })),
        ["no caution at all"] = (Rules.CautionMissing, plan => plan.SetPlan("cautions", new JsonArray())),
        ["a caution without its source"] = (Rules.CautionMissing, plan => plan.SetPlan("cautions", new JsonArray(new JsonObject { ["code"] = "a", ["text"] = "b", ["source"] = "" }))),
        ["a quote that does not add up"] = (Rules.QuoteSum, plan =>
        {
            plan.Plan["quote"]!["total"] = 200.0;
            return plan;
        }),
        ["a field left out"] = (Rules.Schema, plan =>
        {
            plan.Step("mask").Remove("why");
            return plan;
        }),
        ["seconds left out of a time"] = (Rules.Schema, plan => plan.SetPlan("finish", "2027-05-15T14:55")),
        ["sprayed outdoors at night"] = (Rules.NightSpray, plan => plan.ForJob("room: {length: 22 ft, width: 20 ft, height: 9 ft}", "outdoors: true").ForJob("start: 2027-05-15 08:00", "start: 2027-05-15 05:00")
            .ForJob("Sat-Sun: [07:00-12:00, 13:00-18:00]", "Sat-Sun: 03:00-13:00").SetPlan("start", "2027-05-15T05:00:00").EarlierByThreeHours()),
        ["outside the limits before it is dry to touch"] = (Rules.LimitsBeforeTouch, plan => plan.InADailyGarage()
            .ForJob("limits: {air: 50-90 °F, surface: 50-90 °F, humidity: 85 %, above-dew: 3 °C}\nsystems", "limits: {air: 0-20.04 °C, surface: 50-90 °F, humidity: 85 %, above-dew: 3 °C}\nsystems")),
    };

    private static JsonObject Rest(string after, string at) => new() { ["after"] = after, ["at"] = at, ["why"] = "nothing is in hand" };

    public static TheoryData<string> Names => [.. s_broken.Keys];

    [Fact]
    public void A_weekend_made_by_hand_passes()
    {
        new HandMadeWeekend().Check().ShouldBeEmpty();
    }

    [Fact]
    public void The_same_weekend_passes_in_a_garage_that_follows_the_day()
    {
        new HandMadeWeekend().InADailyGarage().Check().ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_plan_broken_by_hand_breaks_its_rule_and_no_other(string name)
    {
        var (rule, breakIt) = s_broken[name];

        var found = breakIt(new HandMadeWeekend()).Check();

        found.Select(violation => violation.Rule).Distinct().ShouldBe([rule], customMessage: string.Join('\n', found));
    }

    [Fact]
    public void Spraying_outdoors_in_wind_is_rejected()
    {
        const string Calm = "time,air °F,humidity %,wind mph,rain mm\n2027-05-15 00:00,70,50,5,0\n2027-05-18 00:00,70,50,5,0\n";
        var plan = new HandMadeWeekend().ForJob("room: {length: 22 ft, width: 20 ft, height: 9 ft}", "outdoors: true").ForJob("steady: {air: 70 °F, humidity: 50 %}", "hours: day.csv");

        plan.Check(Calm).ShouldBeEmpty();
        plan.Check(Calm.Replace(",5,", ",11,", StringComparison.Ordinal)).Select(violation => violation.Rule).Distinct().ShouldBe([Rules.WindOrRain]);
        plan.Check(Calm.Replace(",0\n", ",1\n", StringComparison.Ordinal)).Select(violation => violation.Rule).Distinct().ShouldBe([Rules.WindOrRain]);
    }

    [Fact]
    public void Every_rule_has_a_plan_that_breaks_it()
    {
        var rules = typeof(Rules).GetFields().Select(field => (string)field.GetRawConstantValue()!);

        rules.Except(s_broken.Values.Select(plan => plan.Rule)).ShouldBe([Rules.WindOrRain], customMessage: "wind and rain need an hourly file: the test above");
    }
}
