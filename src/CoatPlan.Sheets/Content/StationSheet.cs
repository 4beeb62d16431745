using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>The handouts of a class: for each station its own steps by period, with room for what the student does and reads.</summary>
public static class StationSheet
{
    private static readonly ImmutableArray<string> Who = ["Name", "Group"];

    private static readonly ImmutableArray<string> Done = ["done at"];

    /// <summary>What the sheet says; null where the job has one crew.</summary>
    /// <param name="plan">The plan.</param>
    public static Sheet? Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var words = new PlanWords(plan);
        var stations = plan.Steps.Where(step => step.Station is not null).GroupBy(step => step.Station!.Value).OrderBy(group => group.Key).ToArray();
        return stations.Length == 0
            ? null
            : new Sheet("station-handouts", "Station handouts", plan.Job, [.. stations.SelectMany(station => Handout(station.Key, station, plan, words)), .. Deferral.Of(plan)]);
    }

    private static IEnumerable<Block> Handout(int station, IEnumerable<PlanStep> steps, Plan plan, PlanWords words)
    {
        yield return new NewPage($"Station {PlanWords.Count(station)}");
        yield return new Blanks(Who);
        yield return new Notice($"Before the first spray: {plan.Respirator.Kind}");
        yield return new Bullets([.. plan.Surfaces.Select(surface => Surface(surface, plan, words))]);
        foreach (var period in WorkPeriod.Of(plan, steps))
        {
            yield return new Heading(period.Title);
            foreach (var step in period.Steps)
                yield return WorkSheet.StepOf(step, plan, words) with { Blanks = Done };
        }

        yield return new Blanks(["What I would do otherwise next time"]);
    }

    private static string Surface(PlanSurface surface, Plan plan, PlanWords words)
    {
        var tag = surface.Tag is { } number ? $", tag {PlanWords.Count(number)}" : "";
        return $"{PlanWords.Name(surface)}{tag}: {surface.Material}, {words.Coats(surface.Id)}";
    }
}
