using CoatPlan.App.Desk;

namespace CoatPlan.Tests.Desk;

public sealed class HistoryTests
{
    [Fact]
    public void Every_change_can_be_taken_back_and_made_again()
    {
        var history = new History("0");
        for (var change = 1; change <= 1000; change++)
            history.Add($"{change}", $"change {change}");

        for (var change = 999; change >= 0; change--)
        {
            history.Undoable.ShouldBe($"change {change + 1}");
            history.Undo();
            history.Text.ShouldBe($"{change}");
        }

        history.Undoable.ShouldBeNull();
        history.Redoable.ShouldBe("change 1");
        for (var change = 1; change <= 1000; change++)
            history.Redo();
        history.Text.ShouldBe("1000");
        history.Redoable.ShouldBeNull();
    }

    [Fact]
    public void A_new_change_forgets_what_was_taken_back()
    {
        var history = new History("a");
        history.Add("b", "b");
        history.Undo();
        history.Add("c", "c");

        history.Redo();

        history.Text.ShouldBe("c");
    }

    [Fact]
    public void The_same_text_is_no_change()
    {
        var history = new History("a");

        history.Add("a", "nothing");

        history.Undoable.ShouldBeNull();
    }
}
