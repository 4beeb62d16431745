using CoatPlan.App.Desk;

namespace CoatPlan.Tests.Desk;

public sealed class SurfaceChangeTests
{
    [Fact]
    public void An_area_that_is_typed_changes_that_value_and_no_other_byte()
    {
        var desk = Desks.Small();

        desk.Type(SurfaceColumn.Area, "9 1/2 ft2").ShouldBeTrue();

        desk.Text.ShouldBe(Desks.SmallJob.Replace("area:   8 ft2   # of one", "area:   9 1/2 ft2   # of one", StringComparison.Ordinal));
    }

    [Fact]
    public void The_plan_follows_a_change()
    {
        var desk = Desks.Planned();
        var before = desk.Plan.ShouldNotBeNull().Surfaces[0].AreaM2;

        desk.Type(SurfaceColumn.Area, "16 ft2");

        desk.Plan!.Surfaces[0].AreaM2.ShouldBe(before * 2, 1e-9);
    }

    [Theory]
    [InlineData(nameof(SurfaceColumn.Area), "nine")]
    [InlineData(nameof(SurfaceColumn.Area), "9")]
    [InlineData(nameof(SurfaceColumn.Area), "9 ft")]
    [InlineData(nameof(SurfaceColumn.Area), "")]
    [InlineData(nameof(SurfaceColumn.Area), "-1 ft2")]
    [InlineData(nameof(SurfaceColumn.Count), "two")]
    [InlineData(nameof(SurfaceColumn.Count), "0")]
    [InlineData(nameof(SurfaceColumn.Count), "1.5")]
    [InlineData(nameof(SurfaceColumn.Piece), "")]
    public void A_mistake_is_explained_in_place_and_keeps_what_was_typed(string column, string typed)
    {
        var desk = Desks.Small();

        desk.Type(Enum.Parse<SurfaceColumn>(column), typed).ShouldBeFalse();

        desk.Typing.ShouldNotBeNull().Complaint.ShouldNotBeNullOrWhiteSpace();
        desk.Typing!.Typed.ShouldBe(typed);
        desk.Text.ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void Leaving_a_value_changes_nothing()
    {
        var desk = Desks.Small();
        desk.Type(SurfaceColumn.Area, "nonsense");

        desk.Do(Word.Back);

        desk.Typing.ShouldBeNull();
        desk.Text.ShouldBe(Desks.SmallJob);
        desk.Undoable.ShouldBeNull();
    }

    [Fact]
    public void A_name_with_marks_of_the_format_in_it_is_taken_as_it_is_typed()
    {
        var desk = Desks.Small();

        desk.Type(SurfaceColumn.Piece, "Tray: \"left\" #2, [old] {x} - &a *b !c").ShouldBeTrue();

        desk.Surface!.Name.ShouldBe("Tray: \"left\" #2, [old] {x} - &a *b !c");
    }

    [Fact]
    public void Conditions_are_picked_from_a_list_with_meanings()
    {
        var desk = Desks.Small();

        desk.Pick(SurfaceColumn.Condition, "light rust", "oily");

        desk.Surface!.Conditions.ShouldBe(["chips", "light rust"]);
        desk.Text.ShouldContain("condition: [chips, light rust]");
    }

    [Fact]
    public void Material_finish_and_system_are_picked()
    {
        var desk = Desks.Small();

        desk.Pick(SurfaceColumn.Material, "cast iron");
        desk.Pick(SurfaceColumn.Finish, "bare");

        desk.Surface!.Material.ShouldBe("cast iron");
        desk.Surface.Finish.ShouldBe("bare");
    }

    [Fact]
    public void A_surface_that_is_copied_moved_and_deleted_leaves_the_text_as_it_was()
    {
        var desk = Desks.Small();
        desk.Do(Word.Down);

        desk.Do(Word.Copy);
        desk.Job!.Surfaces.Length.ShouldBe(3);
        desk.SurfaceAt.ShouldBe(2);
        desk.Do(Word.Delete);

        desk.Job!.Surfaces.Length.ShouldBe(2);
        desk.Text.ShouldBe(Desks.SmallJob);
    }

    [Fact]
    public void Moving_a_surface_takes_the_choice_along()
    {
        var desk = Desks.Small();

        desk.Do(Word.MoveDown);

        desk.Surface!.Name.ShouldBe("Inner fender");
        desk.SurfaceAt.ShouldBe(1);
        desk.Job!.Surfaces[0].Name.ShouldBe("Bracket");
    }

    [Fact]
    public void A_surface_is_added_from_the_usual_pieces()
    {
        var desk = Desks.Small();
        desk.Do(Word.Add);
        desk.Picking.ShouldNotBeNull().GoTo(1);
        var piece = desk.Picking!.Rows[1].Word;

        desk.Do(Word.Enter);

        desk.Job!.Surfaces.Length.ShouldBe(3);
        desk.Surface!.Name.ShouldBe(piece, StringCompareShould.IgnoreCase);
        desk.SurfaceAt.ShouldBe(1);
    }

    [Fact]
    public void The_last_surface_is_not_deleted()
    {
        var desk = Desks.Small();
        desk.Do(Word.Delete);

        desk.Do(Word.Delete);

        desk.Job!.Surfaces.Length.ShouldBe(1);
        desk.Message.ShouldContain("one surface");
    }

    [Fact]
    public void Every_change_is_undone_to_the_byte_and_made_again()
    {
        var desk = Desks.Small();
        var texts = new List<string> { desk.Text };
        desk.Type(SurfaceColumn.Area, "10 ft2");
        texts.Add(desk.Text);
        desk.Do(Word.Copy);
        texts.Add(desk.Text);
        desk.Do(Word.MoveDown);
        texts.Add(desk.Text);
        desk.Pick(SurfaceColumn.Material, "aluminium");
        texts.Add(desk.Text);

        for (var at = texts.Count - 2; at >= 0; at--)
        {
            desk.Do(Word.Undo);
            desk.Text.ShouldBe(texts[at]);
        }

        for (var at = 1; at < texts.Count; at++)
        {
            desk.Do(Word.Redo);
            desk.Text.ShouldBe(texts[at]);
        }
    }

    [Fact]
    public void What_follows_from_the_plan_cannot_be_typed()
    {
        var desk = Desks.Small();
        desk.Choose(0, SurfaceColumn.Ready);

        desk.Do(Word.Enter);

        desk.Typing.ShouldBeNull();
        desk.Message.ShouldNotBeEmpty();
    }
}
