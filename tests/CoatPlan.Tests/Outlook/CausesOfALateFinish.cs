using CoatPlan.Outlook;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Outlook;

/// <summary>What a late finish is put down to.</summary>
public class CausesOfALateFinish
{
    private static readonly Lazy<ChanceModel> Model = new(() =>
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "jobs", "roadster-weekend.job.yaml"));
        var arranged = Planner.Arrange(StartsWorthHaving.Ready(text), SearchDepth.Quick);
        return new ChanceModel(arranged.Settled, Trade.Standard.Catalogue, null, ChanceSpreads.Of(Trade.Standard.Catalogue.Figures));
    });

    [Fact]
    public void Every_piece_of_work_belongs_to_one_cause()
    {
        var model = Model.Value;
        int[] worked = [.. Enumerable.Range(0, model.Work.Length).Where(i => model.Work[i] > 0)];

        model.OfTask.SelectMany(of => of).Where(i => model.Work[i] > 0).Order().ShouldBe(worked);
        model.OfDrying.SelectMany(of => of).Order().ShouldBe(model.OfProduct.SelectMany(of => of).Order());
    }

    [Fact]
    public void Ways_of_the_same_work_are_one_cause()
    {
        Model.Value.Causes.ShouldBeUnique();
        Model.Value.Causes.Count(cause => cause.Contains("scuff", StringComparison.OrdinalIgnoreCase)).ShouldBe(1);
    }

    [Fact]
    public void What_is_left_as_planned_leaves_everything_else_to_the_draw()
    {
        var (model, luck) = (Model.Value, new Luck(Model.Value));
        var changes = 0;
        for (var draw = 0; draw < 5; draw++)
        {
            luck.Draw(draw);
            var (work, paces) = (luck.Work.ToArray(), luck.Paces.ToArray());
            for (var cause = 0; cause < model.WeatherCause; cause++)
            {
                var differs = luck.LeaveAsPlanned(cause);

                for (var i = 0; i < work.Length; i++)
                {
                    luck.Work[i].ShouldBe(model.OfTask[cause].Contains(i) ? model.Work[i] : work[i]);
                    luck.Paces[i].ShouldBe(model.OfDrying[cause].Contains(i) ? (byte)0 : paces[i]);
                }

                differs.ShouldBe(!luck.Work.SequenceEqual(work) || !luck.Paces.SequenceEqual(paces));
                changes += differs ? 1 : 0;
            }
        }

        changes.ShouldBeGreaterThan(5);
    }
}
