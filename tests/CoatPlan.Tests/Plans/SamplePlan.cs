using CoatPlan.Plans;

namespace CoatPlan.Tests.Plans;

/// <summary>Plans made by hand, for tests of what shows a plan: a two-seat roadster's weekend. Its figures are invented and nothing is computed.</summary>
internal static class SamplePlan
{
    private static readonly PlanLimits EtchLimits = new(10, 32, 10, 38, 0, 0.85, 3);

    private static readonly PlanLimits BlackLimits = new(10, 32, 10, 49, 0, 0.85, 3);

    /// <summary>Two inner fenders that stay and a battery tray that comes off: a plan that meets what was asked.</summary>
    public static Plan Weekend() => new()
    {
        Job = "Roadster engine bay",
        Start = At(14, 16, 0),
        Finish = At(16, 15, 5),
        InService = At(16, 21, 40),
        FinishBy = At(16, 20, 0),
        LowerBound = At(15, 14, 30),
        Surfaces =
        [
            new PlanSurface("inner-fender", "Inner fender", 2, 0.78, 1.05, "steel", "factory paint", ["oily", "chips"], "black-over-paint", true, null, At(15, 18, 40), 2.1),
            new PlanSurface("battery-tray", "Battery tray", 1, 0.13, 1.05, "steel", "bare", ["scaly rust"], "black-on-metal", false, 1, At(15, 18, 40), 0.5),
        ],
        Steps =
        [
            Work("photograph", "Photograph how parts sit", At(14, 16, 0), 15, "So that every part finds its way back.", "The job starts now.") with { Surfaces = ["inner-fender", "battery-tray"] },
            Work("disconnect", "Take the battery off", At(14, 16, 15), 10, "No spark near cleaner or paint.", "Follows photographs.") with { After = [After("photograph")] },
            Work("degrease", "Degrease and rinse the bay", At(14, 16, 25), 50, "Oil under a coat lifts it, and sanding grinds it in.", "Follows the battery.") with { Surfaces = ["inner-fender"], After = [After("disconnect")] },
            Work("strip-down", "Take off and tag the battery tray", At(15, 8, 0), 25, "It is coated off the vehicle, from all sides.", "The wash dries overnight.") with { Surfaces = ["battery-tray"], After = [new PlanWait("degrease", PlanStage.Done, null, 600, null)] },
            Work("derust", "Wire-brush the battery tray", At(15, 8, 25), 30, "Loose scale holds no paint.", "Follows strip-down.") with { Surfaces = ["battery-tray"], MakesDust = true, After = [After("strip-down")] },
            Work("featheredge", "Featheredge the chips, ending at P320", At(15, 8, 55), 65, "An edge shows through every coat.", "Follows the tray, with the same dust.") with { Surfaces = ["inner-fender"], MakesDust = true, After = [After("derust")] },
            Work("blow-off", "Blow off and vacuum", At(15, 10, 0), 15, "Dust in a wet coat stays there.", "Follows the last dusty work.") with { Surfaces = ["inner-fender", "battery-tray"], After = [After("featheredge")] },
            Work("mask", "Mask wiring and openings", At(15, 10, 15), 45, "Wiring is not painted.", "Follows blow-off.") with { Surfaces = ["inner-fender"], After = [After("blow-off")] },
            Work("final-wipe", "Solvent wipe with two cloths", At(15, 11, 0), 20, "Fingerprints are oil.", "Follows masking.") with { Surfaces = ["inner-fender", "battery-tray"], After = [After("mask")] },
            Coat("etch-1", "Etch primer on bare metal", At(15, 11, 25), 12, "etch", 1, 1, 1, 180) with
            {
                After = [new PlanWait("final-wipe", PlanStage.Done, 5, 5, 60)],
                WaitsFor = "The solvent flashes off for 5 min.",
                LastSafeStart = At(15, 12, 0),
                Limits = EtchLimits,
            },
            Coat("black-1", "Satin black, coat 1 of 3", At(15, 13, 0), 16, "black", 2, 1, 3, 240) with
            {
                After = [new PlanWait("etch-1", PlanStage.Recoat, 20, 25, null)],
                WaitsFor = "The span ends at 12:00; work goes on at 13:00.",
                LastSafeStart = At(15, 15, 20),
                SlackMin = 140,
            },
            Coat("black-2", "Satin black, coat 2 of 3", At(15, 13, 30), 16, "black", 2, 2, 3, 240) with
            {
                After = [new PlanWait("black-1", PlanStage.Recoat, 10, 14, 60)],
                WaitsFor = "Coat 1 can be recoated 14 min after it ends.",
                LastSafeStart = At(15, 14, 0),
            },
            Coat("black-3", "Satin black, coat 3 of 3", At(15, 14, 0), 16, "black", 2, 3, 3, 240) with
            {
                After = [new PlanWait("black-2", PlanStage.Recoat, 10, 14, 60)],
                WaitsFor = "Coat 2 can be recoated 14 min after it ends.",
                LastSafeStart = At(15, 14, 30),
            },
            Work("unmask", "Pull the tape back on itself", At(15, 15, 16), 15, "Tape left on tears the film or stays.", "Touch-dry of coat 3.") with { Surfaces = ["inner-fender"], After = [new PlanWait("black-3", PlanStage.Touch, 45, 60, 1440)] },
            Work("refit", "Refit the battery tray (tag 1)", At(16, 14, 0), 40, "The vehicle goes back together.", "The film is dry through.") with { Surfaces = ["battery-tray"], After = [new PlanWait("black-3", PlanStage.Through, 1200, 1400, null)] },
            Work("put-away", "Put rags and cans where they may go", At(16, 14, 40), 25, "Oily rags heat up by themselves.", "Follows refitting.") with { After = [After("refit")] },
        ],
        Supplies =
        [
            new PlanSupply("black", "Satin black, underhood", 720, 5.1, 3, 2, 4, 3, 28.50m, PlanBasis.Covers, [new PlanCovered(2, 0.31), new PlanCovered(3, 0.88), new PlanCovered(4, 0.99)]),
            new PlanSupply("etch", "Etch primer", 180, 0.4, 1, 1, 1, 0, null, PlanBasis.Covers, [new PlanCovered(1, 0.97)]),
        ],
        Consumables =
        [
            new PlanConsumable("Masking tape, 18 mm", 12, "m", "Edges of 2 wiring looms, a tenth for overlap.") { Needed = 12 },
            new PlanConsumable("Non-woven pad, very fine", 2, "pieces", "One for each 0.8 m² scuffed.") { Needed = 2 },
        ],
        Air = new PlanAir
        {
            RoomM3 = 112,
            ExhaustM3PerMin = 22.7,
            Mixing = 5,
            ByStep =
            [
                new PlanAirStep("etch-1", Ppm(("acetone", 310), ("xylene", 22)), 0.84, 0.016, 0),
                new PlanAirStep("black-1", Ppm(("acetone", 420), ("xylene", 61)), 1.46, 0.024, 11),
                new PlanAirStep("black-2", Ppm(("acetone", 520), ("xylene", 88)), 1.91, 0.031, 16),
                new PlanAirStep("black-3", Ppm(("acetone", 540), ("xylene", 92)), 1.98, 0.032, 17),
            ],
            TwaMixtureRatio = 0.22,
            ExhaustForLimitM3PerMin = 45,
            ExhaustForLelM3PerMin = 7.3,
            Notes = ["The well-mixed room understates what the person spraying breathes and the vapour at the floor."],
        },
        Respirator = new PlanRespirator(
            "Half mask with organic-vapour cartridges and particulate prefilter",
            ["Spray mist and solvent vapour at up to 2.0 times the mixture limit.", "Cartridges do not hold propellant gases."]),
        Cautions =
        [
            new PlanCaution("ignition", "Put out the gas water heater before the first spray and leave it out until 14:33, when the vapour is purged.", "NFPA 33"),
            new PlanCaution("defer", "The product's label and safety data sheet win over this plan; local codes and licensed practice win over both.", "CoatPlan"),
        ],
        Warnings =
        [
            new PlanWarning("lead-suspected", "inner-fender", null, "The old finish may hold lead: test before dry abrasion, or sand wet."),
        ],
        Masks = [new PlanMask("inner-fender", "wiring loom", "wiring", 1.83, null)],
        Labels =
        [
            new PlanLabel("black", "Satin black, underhood", ["flammable", "irritant"], ["Use with plenty of fresh air.", "Keep away from flame."], "10 min to 1 h, or after 24 h", "10 min to 1 h, or after 24 h", null),
            new PlanLabel("etch", "Etch primer", ["flammable", "acid"], [], "after 20 min", "after 20 min", null),
        ],
        OpenHours =
        [
            new PlanSpan(At(14, 16, 0), At(14, 21, 0)),
            new PlanSpan(At(15, 8, 0), At(15, 12, 0)),
            new PlanSpan(At(15, 13, 0), At(15, 18, 0)),
            new PlanSpan(At(16, 8, 0), At(16, 12, 0)),
            new PlanSpan(At(16, 13, 0), At(16, 18, 0)),
        ],
        Quote = new PlanQuote("USD", 7.1, 603.50m, 41.20m, 10.30m, 4.25m, 659.25m, 571.00m, 762.00m,
            [new PlanQuoteLine("inner-fender", 402.00m, 38.00m), new PlanQuoteLine("battery-tray", 201.50m, 13.50m)],
            ["Repair of rust that has gone through."]),
    };

    /// <summary>The same weekend with a finish that cannot be met.</summary>
    public static Plan TooLate() => Weekend() with
    {
        FinishBy = At(15, 18, 0),
        Reasons = ["Asked to finish by Sat 15 May 18:00; the battery tray is dry through no earlier than Sun 16 May 13:36."],
    };

    /// <summary>A job with nothing placed.</summary>
    public static Plan Nothing() => Weekend() with
    {
        Finish = null,
        InService = null,
        LowerBound = null,
        Steps = [],
        Reasons = ["No four hours above 10 °C before Tue 18 May."],
    };

    /// <summary>A time in May 2027; the 14th is a Friday.</summary>
    public static LocalDateTime At(int day, int hour, int minute) => new(2027, 5, day, hour, minute);

    private static PlanWait After(string step) => new(step, PlanStage.Done, null, null, null);

    private static ImmutableSortedDictionary<string, double> Ppm(params (string Solvent, double Ppm)[] peaks) =>
        peaks.ToImmutableSortedDictionary(peak => peak.Solvent, peak => peak.Ppm, StringComparer.Ordinal);

    private static PlanStep Work(string kind, string title, LocalDateTime start, int minutes, string why, string waitsFor) => new()
    {
        Id = kind,
        Kind = kind,
        Title = title,
        Start = start,
        End = start.PlusMinutes(minutes),
        HandsMin = minutes,
        People = 1,
        AirC = AirAt(start.Hour),
        SurfaceC = AirAt(start.Hour) - 0.8,
        DewPointC = 7.8,
        Humidity = 0.42,
        Why = why,
        WaitsFor = waitsFor,
    };

    private static PlanStep Coat(string id, string title, LocalDateTime start, int minutes, string product, int layer, int coat, int of, double ml) =>
        Work("coat", title, start, minutes, "The film the label asks for, in coats that do not run.", "") with
        {
            Id = id,
            Surfaces = ["inner-fender", "battery-tray"],
            Batch = "bay",
            Product = product,
            Layer = layer,
            Coat = coat,
            Of = of,
            Spray = true,
            Ml = ml,
            Limits = BlackLimits,
        };

    private static double AirAt(int hour) => 14 + (9 * Math.Sin(Math.PI * Math.Clamp(hour - 6, 0, 18) / 18.0));
}
