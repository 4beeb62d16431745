using CoatPlan.Jobs;
using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Tests.Jobs;

public sealed class JobReaderTests
{
    [Fact]
    public void The_complete_job_of_the_contract_is_read()
    {
        var job = Read(JobFiles.Complete);

        job.Name.ShouldBe("Roadster engine bay");
        job.Start.ShouldBe(new LocalDateTime(2027, 5, 14, 16, 0));
        job.FinishBy.ShouldBe(new LocalDateTime(2027, 5, 16, 20, 0));
        job.Reserve.Percent.ShouldBe(10, 1e-9);
        job.TapeLimit.ShouldBe(Duration.FromHours(24));
        job.Place.Volume!.Value.CubicFeet.ShouldBe(22 * 20 * 9, 1e-6);
        job.Place.Exhaust.CubicFeetPerMinute.ShouldBe(800, 1e-9);
        job.Place.Mixing.ShouldBe(5);
        job.Place.Heater.ShouldBe(HeaterKind.Open);
        job.Place.SpraySpots.ShouldBe(1);
        job.Place.Rack.ShouldBeNull();
        job.Place.Ignition.ShouldBe(["gas water heater"]);
        var weather = job.Place.Weather.ShouldBeOfType<DailyWeather>();
        weather.DewPoint!.Value.DegreesFahrenheit.ShouldBe(46, 1e-9);
        job.Crew.Hours.Length.ShouldBe(2);
        job.Crew.Hours[1].Spans.ShouldBe([new(new(8, 0), new(12, 0)), new(new(13, 0), new(18, 0))]);
        job.Products.Select(product => (product.Key, product.Preset)).ShouldBe([("black", "underhood-black-aerosol"), ("etch", "etch-primer-aerosol")]);
        var black = job.Products[0].Label;
        black.Package!.NetMass!.Value.Ounces.ShouldBe(12, 1e-9);
        black.Package.Price.ShouldBe(9.50m);
        black.Recoat.ShouldBe([new(Duration.FromMinutes(10), Duration.FromHours(1), false), new(Duration.FromHours(24), null, false)]);
        black.LabelSays.ShouldBe(["Use with plenty of fresh air.", "Keep away from flame."]);
        job.Systems[0].Layers[0].OnlyBare.ShouldBeTrue();
        job.Systems[0].Layers[1].Coats.ShouldBe(3);
        var fender = job.Surfaces[0];
        (fender.Id, fender.Count, fender.Stays, fender.Form).ShouldBe(("inner-fender", 2, true, "panel"));
        fender.Spread.Percent.ShouldBe(15, 1e-9);
        fender.Masks[0].Edge!.Value.Feet.ShouldBe(6, 1e-9);
        job.Surfaces[1].Spread.Percent.ShouldBe(5, 1e-9);
        job.Surfaces[1].Shapes.ShouldHaveSingleItem().ShouldBeOfType<PanelShape>().Sides.ShouldBe(2);
        job.Surfaces[1].Mark.ShouldBe(new Mark(38, 5));
    }

    [Fact]
    public void A_job_with_every_key_and_every_word_is_read()
    {
        var job = Read(JobFiles.EveryKey);

        var words = Vocabulary.Contract;
        job.Products.Select(product => product.Preset).OfType<string>().ShouldBe(words.ProductPresets);
        job.Surfaces[0].Conditions.ShouldBe(words.Conditions);
        job.Surfaces[0].Near.ShouldBe(words.Near);
        job.Surfaces[0].Masks.Select(mask => mask.Kind).ShouldBe(words.MaskKinds);
        job.Products[0].Label.Hazards.ShouldBe(words.Hazards);
        job.Surfaces.Select(surface => surface.Material).ShouldBe(words.Materials);
        job.Surfaces.Select(surface => surface.Finish).Distinct().ShouldBe(["factory paint", "bare", "repaint", "powder coat", "unknown"]);
        job.Surfaces.Select(surface => surface.Id).Take(5).ShouldBe(["left", "bracket", "bracket-2", "bracket-3", "rail"]);
        job.Products[0].Label.Limits!.Humidity!.Value.Least!.Value.Percent.ShouldBe(30, 1e-9);
        job.Products[2].Label.Limits!.Humidity.ShouldBe(new(null, Ratio.FromPercent(80)));
        job.Products[0].Label.Topcoat.ShouldBe([new(null, Duration.FromMinutes(30), true)]);
        job.Products[0].Label.Solvents.Select(solvent => (solvent.Name, Math.Round(solvent.Share.Percent, 6)))
            .ShouldBe([("acetone", 30), ("108-88-3", 10), ("xylene", 5)]);
        job.Notes.ShouldBe("A job that says all there is to say.");
        job.TestPanels.ShouldHaveSingleItem().Used!.Mass!.Value.Grams.ShouldBe(78, 1e-9);
        job.TestPanels[0].HidesAfter.ShouldBe(2);
        job.Prices!.LabourPerHour.ShouldBe(85m);
        job.Prices.TaxOn.ShouldBe(TaxBase.All);
        job.Prices.Consumables.Select(price => (price.Key, price.Price, price.Pack)).ShouldBe([("masking-tape", 6.40m, 2), ("tack cloth", 1.20m, null)]);
        job.Checks!.CylinderPressures.Length.ShouldBe(3);
        job.Done[1].Coat.ShouldBe(1);
        job.Done[3].Cans!.Mass!.Value.Grams.ShouldBe(120, 1e-9);
        job.Have.Select(entry => entry.IsProduct).ShouldBe([true, true, false, false]);
        job.Have[3].Amount.Count.ShouldBe(20);
        ((BendShape)job.Surfaces[7].Shapes[1]).Angle.Degrees.ShouldBe(90, 1e-9);
    }

    [Theory]
    [InlineData("Inner fender", "inner-fender")]
    [InlineData("  Rail (left) #2 ", "rail-left-2")]
    [InlineData("RÉSERVOIR", "réservoir")]
    [InlineData("???", "surface")]
    public void An_id_follows_from_the_name(string name, string id) => JobWords.IdOf(name).ShouldBe(id);

    [Fact]
    public void What_may_be_absent_may_be_empty()
    {
        string text = JobFiles.Complete
            .Replace("mask: [{what: wiring loom, kind: wiring, edge: 6 ft}]", "mask: []\n    near: []\n    heat: null", StringComparison.Ordinal)
            .Replace("sides: 2}", "sides: 2, less: []}", StringComparison.Ordinal)
            .Replace("start:", "notes: \"\"\ndone: []\nhave: {}\nprices: {}\nstart:", StringComparison.Ordinal);

        var job = Read(text);

        job.Surfaces[0].Masks.ShouldBeEmpty();
        job.Notes.ShouldBe("");
        job.Prices!.Currency.ShouldBe("USD");
    }

    [Fact]
    public void A_given_id_is_not_given_away()
    {
        string text = JobFiles.Complete + "  - {name: Cap, material: steel, area: 1 ft2, system: black-on-metal}\n"
            + "  - {name: Cap, material: steel, area: 1 ft2, system: black-on-metal}\n"
            + "  - {name: Lid, id: cap-2, material: steel, area: 1 ft2, system: black-on-metal}\n";

        Read(text).Surfaces.Skip(2).Select(surface => surface.Id).ShouldBe(["cap", "cap-3", "cap-2"]);
    }

    [Fact]
    public void A_date_beats_a_day_and_a_day_beats_a_range()
    {
        var hours = Read(JobFiles.EveryKey).Crew.Hours;

        WorkingHours.On(hours, new(2027, 5, 14)).Length.ShouldBe(2);
        WorkingHours.On(hours, new(2027, 5, 17)).ShouldBeEmpty();
        var saturday = WorkingHours.On(hours, new(2027, 5, 15)).ShouldHaveSingleItem();
        saturday.On(new(2027, 5, 15)).ShouldBe((new LocalDateTime(2027, 5, 15, 22, 0), new LocalDateTime(2027, 5, 16, 2, 0)));
        WorkingHours.On(hours, new(2027, 5, 18)).ShouldHaveSingleItem().On(new(2027, 5, 18)).End.ShouldBe(new(2027, 5, 19, 0, 0));
    }

    [Theory]
    [InlineData("{Sat: 08:00-10:00, 2027-05-15: 12:00-14:00}")]
    [InlineData("{2027-05-15: 12:00-14:00, Sat: 08:00-10:00}")]
    public void A_date_beats_its_own_day_of_the_week_whichever_stands_first(string hours) =>
        WorkingHours.On(Hours(hours), new(2027, 5, 15)).ShouldBe([new(new(12, 0), new(14, 0))]);

    [Theory]
    [InlineData("{Fri: [08:00-12:00, 12:00-18:00]}", 2)]
    [InlineData("{Fri: 22:00-02:00, Sat: 02:00-06:00}", 1)]
    public void Spans_that_touch_do_not_overlap(string hours, int spansOfFriday) =>
        WorkingHours.On(Hours(hours), new(2027, 5, 14)).Length.ShouldBe(spansOfFriday);

    [Fact]
    public void A_file_with_windows_line_ends_and_a_byte_order_mark_reads_the_same()
    {
        string text = "\uFEFF" + JobFiles.Complete.ReplaceLineEndings("\r\n");

        var reading = JobReader.Read(System.Text.Encoding.UTF8.GetBytes(text), "x.job.yaml", Vocabulary.Contract);

        reading.Problems.ShouldBeEmpty();
        reading.Job!.Surfaces[1].Mark.ShouldBe(new Mark(38, 5));
    }

    [Fact]
    public void A_folder_of_presets_may_add_words()
    {
        string text = JobFiles.Complete.Replace("material: steel", "material: Magnesium-Alloy", StringComparison.Ordinal);
        var more = Vocabulary.Contract with { Materials = Vocabulary.Contract.Materials.Add("magnesium alloy") };

        JobReader.Read(text, "x", Vocabulary.Contract).Problems.Length.ShouldBe(2);
        JobReader.Read(text, "x", more).Job!.Surfaces[0].Material.ShouldBe("magnesium alloy");
    }

    private static ImmutableArray<HoursEntry> Hours(string hours) =>
        Read(JobFiles.Complete.Replace("    Fri: 16:00-21:00\n    Sat-Sun: [08:00-12:00, 13:00-18:00]", "    " + hours, StringComparison.Ordinal)).Crew.Hours;

    private static Job Read(string text)
    {
        var reading = JobReader.Read(text, "x.job.yaml", Vocabulary.Contract);
        reading.Problems.ShouldBeEmpty();
        return reading.Job!;
    }
}
