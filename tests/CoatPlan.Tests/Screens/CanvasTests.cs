using CoatPlan.App.Screens;

namespace CoatPlan.Tests.Screens;

public sealed class CanvasTests
{
    [Fact]
    public void What_does_not_fit_is_cut()
    {
        var canvas = new Canvas(5, 1);

        canvas.Write(-1, 0, "abcdefgh");
        canvas.Write(0, 3, "below");

        canvas.Line(0).ShouldBe("bcdef");
    }

    [Fact]
    public void A_field_ends_with_an_ellipsis_where_its_text_is_too_long()
    {
        var canvas = new Canvas(10, 1);

        canvas.Field(0, 0, 6, "Inner fender");

        canvas.Line(0).ShouldBe("Inner…");
    }

    [Fact]
    public void A_wide_character_takes_two_columns()
    {
        var canvas = new Canvas(6, 1);

        canvas.Write(0, 0, "漆a漆漆");

        canvas.Line(0).ShouldBe("漆a漆");
        canvas.TextAt(2, 0).ShouldBe("a");
    }

    [Fact]
    public void A_letter_and_its_accent_are_one_character()
    {
        var canvas = new Canvas(4, 1);

        canvas.Write(0, 0, "e\u0301x");

        canvas.TextAt(0, 0).ShouldBe("e\u0301");
        canvas.TextAt(1, 0).ShouldBe("x");
    }

    [Fact]
    public void No_control_character_gets_through()
    {
        var canvas = new Canvas(8, 1);

        canvas.Write(0, 0, "a\e[2J\tb\u202Ec");

        canvas.Line(0).ShouldNotContain('\e');
        canvas.Line(0).ShouldNotContain('\u202E');
    }

    [Fact]
    public void A_row_comes_in_pieces_of_one_ink_that_make_it_whole_again()
    {
        var canvas = new Canvas(10, 1);
        canvas.Write(0, 0, "ab", Ink.Strong);
        canvas.Write(2, 0, "漢c", Ink.Warning);

        var runs = canvas.Runs(0).ToArray();

        runs.ShouldBe([(0, "ab", Ink.Strong), (2, "漢c", Ink.Warning), (5, "     ", Ink.Plain)]);
    }

    [Theory]
    [InlineData("abcdefghijklmnopqrst", "abcdefghijklmnopqrst", "")]
    [InlineData("abcdefghijklmnopqrst", "abcDefghijklmnopqrst", "cDe")]
    [InlineData("abcdefghijklmnopqrst", "Abcdefghijklmnopqrst", "Ab")]
    [InlineData("abcdefghijklmnopqrst", "abcdefghijklmnopqrsT", "sT")]
    [InlineData("abcdefghijklmnopqrst", "aBcdefghijklmnopqRst", "aBc qRs")]
    [InlineData("abcdefghijklmnopqrst", "aBcdEfghijklmnopqrst", "aBcdEf")]
    [InlineData("ab漢字efghijklmnopqrst", "aB漢字efghijklmnopqrst", "aB漢")]
    [InlineData("ab漢字efghijklmnopqrst", "ab漢字Efghijklmnopqrst", "字Ef")]
    [InlineData("ab漢字efghijklmnopqrst", "abcdefghijklmnopqrstuv", "bcdefghijklmnopqrstuv")]
    public void A_row_is_written_again_where_something_else_stands_and_never_half_a_character(string there, string now, string written)
    {
        var (before, after) = (new Canvas(24, 1), new Canvas(24, 1));
        before.Write(0, 0, there);
        after.Write(0, 0, now);

        var parts = after.Parts(0, x => before.TextAt(x, 0) == after.TextAt(x, 0)).ToArray();

        string.Join(' ', parts.Select(part => string.Concat(after.Runs(0, part.From, part.End).Select(run => run.Text)).TrimEnd())).ShouldBe(written);
    }

    [Fact]
    public void A_row_of_nothing_that_stands_is_written_whole()
    {
        var canvas = new Canvas(10, 1);
        canvas.Write(0, 0, "漢");

        canvas.Parts(0, _ => false).ShouldBe([(0, 10)]);
    }

    [Fact]
    public void A_canvas_without_columns_has_no_pieces()
    {
        new Canvas(0, 3).Runs(0).ShouldBeEmpty();
    }
}
