using CoatPlan.App.Desk;
using CoatPlan.Jobs;

namespace CoatPlan.Tests.Desk;

public sealed class FieldTests
{
    [Fact]
    public void Every_field_of_the_job_can_be_reached()
    {
        var desk = AtFields();

        desk.Outline.Rows.Select(row => row.Name).ShouldBe(
            ["coatplan", "job", "notes", "units", "start", "finish-by", "as-of", "reserve", "tape-limit", "built", "place", "crew", "products", "systems",
                "surfaces", "have", "test-panels", "prices", "checks", "done"]);
        desk.Outline.Rows.ShouldAllBe(row => row.Says.Length > 0);
    }

    [Fact]
    public void A_value_deep_in_the_job_is_changed_and_no_other_byte()
    {
        var desk = AtFields();
        Open(desk, "place", "weather", "steady");

        Type(desk, "air", "68 °F").ShouldBeTrue();

        desk.Text.ShouldBe(Desks.SmallJob.Replace("{air: 70 °F, ", "{air: 68 °F, ", StringComparison.Ordinal));
        desk.Job.ShouldNotBeNull();
    }

    [Fact]
    public void A_wrong_value_is_refused_and_what_was_typed_stays()
    {
        var desk = AtFields();
        Open(desk, "place", "weather", "steady");

        Type(desk, "humidity", "140 %").ShouldBeFalse();

        desk.Typing.ShouldNotBeNull().Complaint.ShouldNotBeNull();
        desk.Typing!.Typed.ShouldBe("140 %");
        desk.Text.ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void A_field_that_was_not_set_is_put_in()
    {
        var desk = AtFields();

        Type(desk, "finish-by", "2027-05-16 20:00").ShouldBeTrue();

        desk.Job!.FinishBy.ShouldBe(new LocalDateTime(2027, 5, 16, 20, 0));
    }

    [Fact]
    public void A_map_is_filled_in_field_by_field_and_tells_what_is_missing_meanwhile()
    {
        var desk = AtFields();
        Open(desk, "checks", "pressure-test");
        Type(desk, "start", "16 psi").ShouldBeTrue();
        desk.Job.ShouldBeNull();
        desk.Reading.Problems.ShouldNotBeEmpty();

        Type(desk, "end", "16 psi").ShouldBeTrue();

        desk.Job.ShouldNotBeNull();
        desk.Plan.ShouldNotBeNull();
    }

    [Fact]
    public void A_product_of_another_name_is_added_from_its_preset()
    {
        var desk = AtFields();
        Open(desk, "products");
        desk.Do(Word.Last);
        desk.Do(Word.Enter);
        desk.Take("etch").ShouldBeTrue();

        var picker = desk.Picking.ShouldNotBeNull();
        picker.Type("etch-primer");
        desk.Do(Word.Enter);

        desk.Job!.Products.Select(product => product.Key).ShouldBe(["black", "etch"]);
        desk.Job.Products[1].Preset.ShouldBe("etch-primer-aerosol");
    }

    [Fact]
    public void A_field_that_is_deleted_goes_back_to_its_default()
    {
        var desk = AtFields();
        Open(desk, "surfaces", "1");
        Choose(desk, "stays");

        desk.Do(Word.Delete);

        desk.Job!.Surfaces[0].Stays.ShouldBeFalse();
        desk.Do(Word.Undo);
        desk.Text.ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void Back_goes_up_a_level_and_stops_at_the_top()
    {
        var desk = AtFields();
        Open(desk, "place", "weather");

        desk.Do(Word.Back);
        desk.Outline.Path.ToString().ShouldBe("place");
        desk.Do(Word.Back);
        desk.Do(Word.Back);

        desk.Outline.Path.ShouldBe(JobPath.Root);
        desk.Place.ShouldBe(DeskPlace.Fields);
    }

    private static JobDesk AtFields()
    {
        var desk = Desks.Small();
        desk.Do(Word.GoFields);
        return desk;
    }

    private static void Open(JobDesk desk, params string[] names)
    {
        foreach (var name in names)
        {
            Choose(desk, name);
            desk.Do(Word.Enter);
        }
    }

    private static void Choose(JobDesk desk, string name)
    {
        desk.Do(Word.First);
        var at = desk.Outline.Rows.Select(row => row.Name).ToList().IndexOf(name);
        at.ShouldBeGreaterThanOrEqualTo(0);
        for (var down = 0; down < at; down++)
            desk.Do(Word.Down);
    }

    private static bool Type(JobDesk desk, string name, string typed)
    {
        Choose(desk, name);
        desk.Do(Word.Enter);
        return desk.Take(typed);
    }
}
