using CoatPlan.App.Wording;

namespace CoatPlan.Tests.Outlook;

/// <summary>What a chance says to the person.</summary>
public class ChanceInWords
{
    private static readonly LocalDateTime Noon = new(2027, 5, 16, 12, 0);

    [Fact]
    public void What_helps_stands_beside_what_the_same_draws_come_to_without_it()
    {
        var chance = Chance(new ChanceBuy("nothing more", 0.5, Noon), new ChanceBuy("one more helper", 0.6, Noon.PlusHours(2)), new ChanceBuy("one more hour of work each day", 0.5, Noon.PlusHours(-1)));

        ChanceWords.Helps(chance).ShouldBe(
        [
            "With one more helper: 60 % instead of 50 % in time, even odds Sun 16 May 14:00 instead of Sun 16 May 12:00",
            "With one more hour of work each day: 50 % in time, even odds Sun 16 May 11:00 instead of Sun 16 May 12:00",
        ]);
    }

    [Fact]
    public void Without_a_deadline_only_the_odds_are_told() =>
        ChanceWords.Helps(Chance(new ChanceBuy("nothing more", null, null), new ChanceBuy("one more helper", null, Noon)))
            .ShouldBe(["With one more helper: even odds Sun 16 May 12:00 instead of not within 60 days"]);

    [Fact]
    public void What_was_tried_in_vain_is_told_last() =>
        ChanceWords.Helps(Chance(new ChanceBuy("nothing more", 0.5, Noon), new ChanceBuy("one more helper", 0.5, Noon)))
            .ShouldBe(["Tried, and changing nothing for the better: one more helper"]);

    private static Chance Chance(ChanceBuy without, params ImmutableArray<ChanceBuy> buys) => new() { Draws = 100, Planned = Noon, Unbought = without, Buys = buys };
}
