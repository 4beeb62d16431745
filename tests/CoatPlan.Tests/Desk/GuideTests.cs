using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.App.Desk.Asking;
using CoatPlan.Jobs;

namespace CoatPlan.Tests.Desk;

public sealed class GuideTests
{
    private static readonly LocalDateTime Friday = new(2027, 5, 14, 16, 0);

    [Fact]
    public void A_weekend_is_built_by_asking_and_ends_in_a_plan()
    {
        var desk = Weekend();

        desk.Guiding.ShouldBeNull();
        desk.Plan.ShouldNotBeNull();
        var job = desk.Job.ShouldNotBeNull();
        job.Name.ShouldBe("Engine bay");
        job.Surfaces.Select(surface => (surface.Name, surface.Count, surface.Material, surface.Finish)).ShouldBe([("Inner fender", 2, "steel", "factory paint"), ("Battery tray", 1, "steel", "bare")]);
        job.Surfaces[0].Conditions.ShouldBe(["oily", "chips"]);
        job.Surfaces[0].Stays.ShouldBeTrue();
        job.Systems.Length.ShouldBe(2);
        job.Systems[0].Layers.Select(layer => (layer.Product, layer.OnlyBare)).ShouldBe([("etch-primer", true), ("underhood-black", false)]);
        job.Systems[1].Layers.Select(layer => (layer.Product, layer.OnlyBare)).ShouldBe([("etch-primer", false), ("underhood-black", false)]);
        job.FinishBy.ShouldBe(new LocalDateTime(2027, 5, 16, 20, 0));
    }

    [Theory]
    [InlineData("us", "ft²", "m²")]
    [InlineData("metric", "m²", "ft²")]
    public void Presets_are_explained_in_the_units_of_the_job(string units, string own, string other)
    {
        var desk = Asked();
        Pick(desk, "my own vehicle");
        desk.Take("Engine bay").ShouldBeTrue();
        Pick(desk, units);

        var fender = desk.Picking.ShouldNotBeNull().Rows.Single(row => row.Word == "inner fender");

        fender.Means.ShouldContain(own);
        fender.Means.ShouldNotContain(other);
        PresetTables.Products(CoatPlan.Presets.BuiltInPresets.Read(), PrintUnits.Us).Rows.ShouldAllBe(row => !row.Means.Contains("µm") && !row.Means.Contains(" m²") && !row.Means.Contains(" g covers"));
    }

    [Fact]
    public void An_answer_that_the_job_cannot_hold_is_refused_and_stays_typed()
    {
        var desk = Asked();
        Pick(desk, "my own vehicle");
        desk.Take("Engine bay").ShouldBeTrue();
        Pick(desk, "us");
        Mark(desk, "inner fender");

        desk.Take("two and a half").ShouldBeFalse();

        desk.Typing.ShouldNotBeNull().Complaint.ShouldNotBeNull();
        desk.Typing!.Typed.ShouldBe("two and a half");
    }

    [Fact]
    public void Going_back_asks_the_question_before_again()
    {
        var desk = Asked();
        Pick(desk, "my own vehicle");
        desk.Take("Engine bay").ShouldBeTrue();

        desk.Do(Word.Back);
        desk.GuideAsks!.Asks.ShouldContain("called");
        desk.Do(Word.Back);

        desk.GuideAsks!.Asks.ShouldContain("Whom");
    }

    [Fact]
    public void Leaving_the_first_question_asks_and_going_on_goes_on()
    {
        var desk = Asked();
        desk.Do(Word.Back);
        desk.Asking.ShouldNotBeNull();
        desk.Left.ShouldBeFalse();

        desk.Answer('g');

        desk.Picking.ShouldNotBeNull();
    }

    [Fact]
    public void What_was_answered_can_be_taken_before_the_end()
    {
        var desk = Asked();
        Pick(desk, "my own vehicle");
        desk.Take("Garden gate").ShouldBeTrue();
        desk.Do(Word.Quit);

        desk.Answer('t');

        desk.Job.ShouldNotBeNull().Name.ShouldBe("Garden gate");
        desk.Unsaved.ShouldBeTrue();
    }

    [Fact]
    public void A_customer_is_asked_for_prices_and_gets_a_quote()
    {
        var desk = Asked();
        Pick(desk, "a customer");
        Answers(desk, "Utility van front", null, "radiator support");
        foreach (var answer in new[] { "1", null, null, "*road grime", "6 ft2", "stays on the vehicle", "*enamel-aerosol", "7.80", null, "indoors", "40 ft x 24 ft x 14 ft", "3000 ft3/min", "the same all the time", "66 °F, 35 %", "2027-03-08 08:00", null, "", "2", "85 /h", "25 %" })
            Answer(desk, answer);

        desk.Job.ShouldNotBeNull().Prices.ShouldNotBeNull().LabourPerHour.ShouldBe(85m);
    }

    // What is asked at any moment is a job that can be read: nothing is left for the end.
    [Fact]
    public void Every_draft_is_a_job_and_names_survive_whatever_they_hold()
    {
        foreach (var name in new[] { "a: b", "# no comment", "\"quoted\"", "true", "null", "[list]", "- dash", "42", "naïve 漆", "it's", "back\\slash", "&anchor", "*star", "tab\there", "%percent", "@at", "12:30", "a: 1 # x" })
        {
            var draft = new GuideDraft { Name = name };

            var reading = Desks.Quick.Read(GuideText.Of(draft), "new job", null, null);

            reading.Ready.ShouldNotBeNull(name).Job.Name.ShouldBe(name.Replace("\t", "", StringComparison.Ordinal));
        }
    }

    private static JobDesk Asked()
    {
        var desk = Desks.Small();
        desk.Guide(Friday);
        return desk;
    }

    private static JobDesk Weekend()
    {
        var desk = Asked();
        Pick(desk, "my own vehicle");
        desk.Take("Engine bay").ShouldBeTrue();
        Pick(desk, "us");
        Mark(desk, "inner fender", "battery tray");
        foreach (var answer in new[]
        {
            "2", "steel", "factory paint", "*oily,chips", "8 ft2", "stays on the vehicle",
            "1", "steel", "bare", "*scaly rust", "1.33 ft2", "comes off",
            "*etch-primer-aerosol,underhood-black-aerosol", "", "9.50", "etch-primer, bare spots only", "underhood-black", "etch-primer", "underhood-black",
            "indoors", "22 ft x 20 ft x 9 ft", "800 ft3/min", "cool nights, warm days", "54 °F, 74 °F, 46 °F",
            "2027-05-14 16:00", "a weekend", "2027-05-16 20:00", "1",
        })
            Answer(desk, answer);
        return desk;
    }

    private static void Answers(JobDesk desk, params string?[] answers)
    {
        foreach (var answer in answers[..^1])
            Answer(desk, answer);
        Mark(desk, answers[^1]!);
    }

    private static void Answer(JobDesk desk, string? answer)
    {
        var asks = desk.GuideAsks.ShouldNotBeNull().Asks;
        if (desk.Typing is not null)
            desk.Take(answer!).ShouldBeTrue($"{asks} {answer}: {desk.Typing?.Complaint}");
        else if (answer is ['*', .. var words])
            Mark(desk, words.Split(','));
        else if (answer is null)
            desk.Do(Word.Enter);
        else
            Pick(desk, answer);
    }

    private static void Pick(JobDesk desk, string word)
    {
        var picker = desk.Picking.ShouldNotBeNull(word);
        var at = picker.Rows.Select(row => row.Word).ToList().IndexOf(word);
        at.ShouldBeGreaterThanOrEqualTo(0, $"{picker.Asks} {word}");
        picker.GoTo(at);
        desk.Do(Word.Enter);
        desk.Picking.ShouldNotBe(picker, picker.Complaint ?? "");
    }

    private static void Mark(JobDesk desk, params string[] words)
    {
        var picker = desk.Picking.ShouldNotBeNull();
        foreach (var word in words)
        {
            picker.GoTo(picker.Rows.Select(row => row.Word).ToList().IndexOf(word));
            desk.Do(Word.Mark);
        }

        desk.Do(Word.Enter);
    }
}
