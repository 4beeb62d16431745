using CoatPlan.App.Desk;

namespace CoatPlan.Tests.Desk;

public sealed class PickerTests
{
    private static readonly ImmutableArray<PickerRow> Rows =
        [new("oily", "oil and grease"), new("light rust", "a bloom"), new("scaly rust", "flakes"), new("chips", "edges")];

    [Fact]
    public void It_begins_at_what_is_chosen_now()
    {
        Picker(["scaly rust"]).Picked().ShouldBe(["scaly rust"]);
    }

    [Fact]
    public void Typing_narrows_by_word_and_meaning_and_erasing_widens()
    {
        var picker = Picker([]);
        picker.Type("R");
        picker.Type("u");
        picker.Rows.Select(row => row.Word).ShouldBe(["light rust", "scaly rust"]);

        picker.Erase();
        picker.Erase();
        picker.Erase();

        picker.Rows.Length.ShouldBe(4);
    }

    [Fact]
    public void Several_marked_rows_are_taken_in_the_lists_order()
    {
        var picker = Several(["chips"]);
        picker.GoTo(0);
        picker.Mark();

        picker.Picked().ShouldBe(["oily", "chips"]);
    }

    [Fact]
    public void What_is_marked_stays_marked_while_the_list_is_narrowed()
    {
        var picker = Several(["chips"]);
        picker.Type("scaly");
        picker.Mark();

        picker.Picked().ShouldBe(["scaly rust", "chips"]);
    }

    [Fact]
    public void Nothing_is_taken_where_nothing_fits()
    {
        var picker = Picker([]);
        picker.Type("zzz");

        picker.Picked().ShouldBeEmpty();
    }

    private static Picker Picker(string[] chosen) => new("which", Rows, chosen, _ => null);

    private static Picker Several(string[] chosen) => new("which", Rows, chosen, _ => null) { Several = true };
}
