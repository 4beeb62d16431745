using CoatPlan.Presets;

namespace CoatPlan.Tests.Outside;

/// <summary>Grit sizes against particle size tables (Data/check-values/abrasives.csv names each).</summary>
public sealed class PublishedAbrasives
{
    [Fact]
    public void Every_grit_has_its_published_size()
    {
        var abrasives = BuiltInPresets.Read().Abrasives;
        foreach (var row in CheckValues.Rows("abrasives.csv"))
        {
            var ours = abrasives.Single(abrasive => abrasive.Scale == row["scale"] && abrasive.Grit == (int)row.Number("grit"));

            ours.Size.Micrometers.ShouldBe(row.Number("sizeUm"), Tolerance(ours), row["scale"] + row["grit"]);
            if (row.Maybe("otherSizeUm") is { } other) ours.Size.Micrometers.ShouldBe(other, Tolerance(ours), row["scale"] + row["grit"]);
        }
    }

    [Fact]
    public void A_higher_grit_of_a_scale_is_finer()
    {
        foreach (var scale in BuiltInPresets.Read().Abrasives.GroupBy(abrasive => abrasive.Scale))
        {
            var sizes = scale.OrderBy(abrasive => abrasive.Grit).Select(abrasive => abrasive.Size.Micrometers).ToArray();
            sizes.ShouldBe(sizes.OrderDescending().Distinct());
        }
    }

    [Fact]
    public void A_task_uses_grits_that_exist_coarse_before_fine()
    {
        var catalogue = BuiltInPresets.Read();
        var grits = catalogue.Abrasives.Where(abrasive => abrasive.Scale == "P").Select(abrasive => abrasive.Grit).ToArray();
        foreach (var task in catalogue.GritTasks)
        {
            grits.ShouldContain(task.Coarsest, task.Word);
            grits.ShouldContain(task.Finest, task.Word);
            task.Coarsest.ShouldBeLessThanOrEqualTo(task.Finest, task.Word);
        }
    }

    // Tolerances of the table: 1 µm; P240 and CAMI from 240 up 2 µm.
    private static double Tolerance(Abrasive abrasive) => abrasive is { Scale: "P", Grit: 240 } or { Scale: "CAMI", Grit: >= 240 } ? 2 : 1;
}
