using CoatPlan.App.Desk;
using CoatPlan.App.Screens;

namespace CoatPlan.Tests.Screens;

public sealed class PickerScreenTests
{
    private const string Long = "It is told in many words what this row means, so many that four rows of a narrow terminal do not hold them all; "
        + "and the last of the words is what a person wants to read before anything is picked, whether it is picked then or not, because a word on its own says too little "
        + "to somebody who never refinished a part before, and who has nobody to ask on a Friday evening in a garage. The end.";

    [Fact]
    public void The_meaning_of_the_chosen_row_is_not_cut()
    {
        Drawn(Of(["first", "second"], Long)).ShouldContain("The end.");
    }

    [Fact]
    public void The_list_does_not_jump_while_one_goes_through_it()
    {
        var picker = new Picker("Which?", [new PickerRow("short", "few words"), new PickerRow("long", Long), .. Many()], [], _ => null);
        var before = RowOf(Drawn(picker), "row 1 ");

        picker.GoTo(1);

        RowOf(Drawn(picker), "row 1 ").ShouldBe(before);
    }

    [Fact]
    public void A_note_is_wrapped_and_a_click_still_finds_its_row()
    {
        var picker = new Picker("Which?", [.. Many()], [], _ => null) { Note = Long[..120] };
        var y = RowOf(Drawn(picker), "row 3 ");

        PickerScreen.At(80, 19, y, picker).ShouldBe(3);
    }

    [Fact]
    public void A_list_in_which_nothing_is_marked_says_what_enter_takes()
    {
        var picker = new Picker("Which?", [.. Many()], [], _ => null) { Several = true };
        Drawn(picker).ShouldContain("none marked");

        picker.Mark();

        Drawn(picker).ShouldContain("1 marked");
    }

    private static IEnumerable<PickerRow> Many() => Enumerable.Range(0, 20).Select(row => new PickerRow($"row {row} ", "few words"));

    private static Picker Of(string[] words, string means) => new("Which?", [.. words.Select(word => new PickerRow(word, means))], [], _ => null);

    private static int RowOf(string drawn, string word) => Array.FindIndex(drawn.Split('\n'), line => line.Contains(word, StringComparison.Ordinal));

    private static string Drawn(Picker picker)
    {
        var canvas = new Canvas(80, 19);
        PickerScreen.Draw(canvas, picker);
        return canvas.ToString();
    }
}
