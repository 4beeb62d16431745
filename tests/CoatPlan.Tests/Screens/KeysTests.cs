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
    public void The_keys_named_at_a_place_all_fit_on_the_bottom_line()
    {
        foreach (var place in Enum.GetValues<DeskPlace>())
            KeyHints.At(place).Sum(hint => hint.Name.Length + hint.Brief.Length + 3).ShouldBeLessThanOrEqualTo(82, place.ToString());
    }

    [Fact]
    public void The_menu_offers_what_can_be_done_before_the_places()
    {
        var menu = Keys.MenuAt(DeskPlace.Surfaces);

        menu[0].Word.ShouldBe(Word.Enter);
        menu.Select(row => row.Word).ShouldContain(Word.GoSheets);
        menu.Select(row => row.Word).ShouldNotContain(Word.Judge);
    }
}
