using CoatPlan.Jobs;
using CoatPlan.Prep;
using UnitsNet;

namespace CoatPlan.Tests.Prep;

/// <summary>Facts that a refinisher takes for granted. Source of each: common practice, unless said.</summary>
public class TradeFacts
{
    [Theory]
    [InlineData("chips")]
    [InlineData("scratches")]
    [InlineData("peeling")]
    public void P320_ends_a_featheredge(string condition) =>
        PrepJob.Sequence(PrepJob.Surface(finish: "factory paint", system: PrepJob.EtchSpotsAndEnamel, condition: [condition]))
            .The("featheredge").Grits[^1].ShouldBe("P320");

    // Never jump more than 100 to 150 grit numbers: trade guides, published.
    [Theory]
    [InlineData("chips")]
    [InlineData("peeling")]
    public void Grits_of_a_featheredge_never_jump_more_than_150(string condition)
    {
        var grits = PrepJob.Sequence(PrepJob.Surface(finish: "factory paint", condition: [condition])).The("featheredge").Grits
            .Select(grit => int.Parse(grit[1..], System.Globalization.CultureInfo.InvariantCulture)).ToArray();

        grits.Zip(grits.Skip(1), (coarse, fine) => fine - coarse).ShouldAllBe(jump => jump > 0 && jump <= 150);
    }

    [Theory]
    [InlineData("steel", "factory paint", "chips")]
    [InlineData("aluminium", "bare", "white corrosion")]
    [InlineData("ABS", "unknown", "scratches")]
    [InlineData("cadmium-plated steel", "bare", "sound")]
    public void Solvent_cleans_before_abrasion_and_again_before_paint(string material, string finish, string condition)
    {
        var words = PrepJob.Sequence(PrepJob.Surface(material: material, finish: finish, condition: [condition])).Words();
        string[] abrasion = ["derust", "featheredge", "scuff"];

        var clean = Array.IndexOf(words, "solvent-clean");
        var wipe = Array.IndexOf(words, "final-wipe");

        clean.ShouldBeGreaterThanOrEqualTo(0);
        abrasion.Select(word => Array.IndexOf(words, word)).Where(at => at >= 0).ShouldAllBe(at => at > clean && at < wipe);
    }

    [Fact]
    public void Wipe_flash_tack_and_coat_go_in_one_go()
    {
        var sequence = PrepJob.Sequence(PrepJob.Surface());

        sequence.The("final-wipe").Wait.Kind.ShouldBe(WaitKind.SolventFlash);
        sequence.The("tack").After.ShouldBe([sequence.The("final-wipe").Id]);
        sequence.The("final-wipe").Breakable.ShouldBeFalse();
        sequence.The("tack").Breakable.ShouldBeFalse();
    }

    [Fact]
    public void Lead_suspected_means_no_dry_abrasion()
    {
        var suspected = PrepJob.Sequence(PrepJob.Surface(finish: "repaint", system: PrepJob.EtchSpotsAndEnamel, condition: ["chips", "scaly rust", "peeling"]));
        var ruledOut = PrepJob.Sequence(PrepJob.Surface(finish: "repaint", system: PrepJob.EtchSpotsAndEnamel, condition: ["chips", "scaly rust", "peeling"])
            with { LeadTest = LeadTestResult.Negative });

        suspected.Operations.ShouldAllBe(operation => !operation.MakesDust);
        ruledOut.Operations.ShouldContain(operation => operation.MakesDust);
    }

    // 29 CFR 1910.1001 App. F: low-pressure wet cleaning, no dry brushing; published, read second-hand.
    [Fact]
    public void Brake_dust_is_taken_off_wet_and_never_blown_about()
    {
        var sequence = PrepJob.Sequence(PrepJob.Surface("Brake backing plate", condition: ["light rust"]));

        sequence.Words().ShouldContain("degrease");
        sequence.The("blow-off").Title.ShouldContain("no air");
    }

    [Fact]
    public void A_wash_is_followed_by_drying()
    {
        var wash = PrepJob.Sequence(PrepJob.Surface(condition: ["oily"])).The("wash");

        wash.Wait.Kind.ShouldBe(WaitKind.WashDry);
        wash.Wait.Time.ShouldBeGreaterThan(Duration.Zero);
    }

    [Theory]
    [InlineData(new[] { 132.0, 131, 134, 133 }, CylinderVerdict.Excellent)]
    [InlineData(new[] { 130.0, 135 }, CylinderVerdict.Excellent)]
    [InlineData(new[] { 115.0, 118, 112, 116 }, CylinderVerdict.Good)]
    [InlineData(new[] { 110.0, 112 }, CylinderVerdict.Low)]
    [InlineData(new[] { 100.0, 102, 101, 99 }, CylinderVerdict.Low)]
    [InlineData(new[] { 132.0, 130, 95, 131 }, CylinderVerdict.Uneven)]
    public void Even_cylinders_over_110_psi_pass_and_130_to_135_is_excellent_and_one_far_below_fails(double[] psi, CylinderVerdict verdict) =>
        CylinderCheck.Judge([.. psi.Select(reading => Pressure.FromPoundsForcePerSquareInch(reading))], PrepJob.Catalogue.Figures).Verdict.ShouldBe(verdict);

    [Fact]
    public void A_cylinder_at_just_75_percent_of_the_highest_does_not_fail()
    {
        var check = CylinderCheck.Judge(
            [Pressure.FromPoundsForcePerSquareInch(160), Pressure.FromPoundsForcePerSquareInch(120)], PrepJob.Catalogue.Figures);

        check.LowestShare.ShouldBe(0.75, 1e-9);
        check.LowestCylinder.ShouldBe(2);
        check.Verdict.ShouldBe(CylinderVerdict.Good);
    }

    [Theory]
    [InlineData(15.0, 15.0, 15.0, CoolingVerdict.Holds)]
    [InlineData(15.0, 15.0, 12.0, CoolingVerdict.Leaks)]
    [InlineData(15.0, 15.0, 14.2, CoolingVerdict.Leaks)]
    [InlineData(15.0, 15.0, 14.3, CoolingVerdict.Holds)]
    [InlineData(15.0, 10.0, 10.0, CoolingVerdict.NotAtCap)]
    [InlineData(7.0, 15.0, 15.0, CoolingVerdict.NotAtCap)]
    [InlineData(null, 15.0, 15.0, CoolingVerdict.CapUnknown)]
    public void A_cooling_system_is_tested_at_its_caps_own_rating(double? cap, double start, double end, CoolingVerdict verdict)
    {
        var test = new PressureTest
        {
            Cap = cap is { } psi ? Pressure.FromPoundsForcePerSquareInch(psi) : null,
            Start = Pressure.FromPoundsForcePerSquareInch(start),
            End = Pressure.FromPoundsForcePerSquareInch(end),
        };

        CoolingCheck.Judge(test, PrepJob.Catalogue.Figures).Verdict.ShouldBe(verdict);
    }
}
