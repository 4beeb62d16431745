using CoatPlan.App.Desk;
using CoatPlan.App.Screens;

namespace CoatPlan.Tests.Screens;

public sealed class KeysTests
{
    [Fact]
    public void No_key_asks_for_two_things()
    {
        Keys.All.SelectMany(row => row.Pressed).GroupBy(name => name.Key.ToString()).Where(group => group.Count() > 1).Select(group => group.Key).ShouldBeEmpty();
    }

    [Fact]
    public void Every_word_has_a_key_and_stands_once_in_the_list()
    {
        Keys.All.Select(row => row.Word).Order().ShouldBe(Enum.GetValues<Word>().Order());
    }

    [Fact]
    public void Every_key_is_explained_in_words()
    {
        Keys.All.ShouldAllBe(row => row.Means.Length > row.Brief.Length || row.Word == Word.Help);
    }

    [Fact]
    public void The_bottom_line_names_saving_help_and_leaving_at_every_place()
    {
        foreach (var place in Enum.GetValues<DeskPlace>())
            Keys.BottomLine(place).Select(row => row.Word).ShouldContain(word => word == Word.Quit);
    }
}
