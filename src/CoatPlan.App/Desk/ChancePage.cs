using CoatPlan.App.Wording;

namespace CoatPlan.App.Desk;

/// <summary>How likely a job is done in time, as a page.</summary>
internal static class ChancePage
{
    /// <summary>The page of a chance.</summary>
    /// <param name="chance">The chance.</param>
    /// <param name="finishBy">When the job must be done; null where nothing was asked.</param>
    public static TextPage Of(Chance chance, LocalDateTime? finishBy)
    {
        var lines = ImmutableArray.CreateBuilder<PageLine>();
        Say("planned     ", $"finish {Clock.Moment(chance.Planned)}");
        if (chance.Meets is { } meets && finishBy is { } asked)
            Say("in time     ", ChanceWords.InTime(meets, chance.Draws, asked));
        Say("even odds   ", $"finish by {ChanceWords.Finish(chance.Finish50)}");
        Say("9 of 10     ", $"finish by {ChanceWords.Finish(chance.Finish90)}");

        Head("What costs the most");
        List(ChanceWords.Costs(chance));

        if (!chance.Buys.IsEmpty)
            Head("What would help");
        List(ChanceWords.Helps(chance));

        Head("Cans");
        List(ChanceWords.Cans(chance));
        lines.Add(new PageLine(PageLineKind.Quiet, "", "Each draw carries the plan out under other hands, drying and weather; how far they spread is an estimate of the presets."));
        return new TextPage("How likely is it done in time?", lines.ToImmutable());

        void Head(string text) => lines.Add(new PageLine(PageLineKind.Heading, "", text));
        void List(IEnumerable<string> sentences) => lines.AddRange(sentences.Select(sentence => new PageLine(PageLineKind.Text, "- ", sentence)));
        void Say(string lead, string text) => lines.Add(new PageLine(PageLineKind.Text, lead, text));
    }
}
