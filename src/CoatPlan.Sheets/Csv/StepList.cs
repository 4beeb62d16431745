using CoatPlan.Plans;
using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Csv;

/// <summary>The steps of a plan as a table for a spreadsheet.</summary>
public static class StepList
{
    private static readonly ImmutableArray<string> Head =
    [
        "id", "kind", "title", "surfaces", "station", "product", "layer", "coat", "of", "start", "end", "hands-on min", "people", "last safe start",
        "air C", "surface C", "dew point C", "humidity", "done", "why",
    ];

    /// <summary>Writes the list.</summary>
    /// <param name="plan">The plan.</param>
    public static string Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var words = new PlanWords(plan);
        return CsvTable.Write(Head, plan.Steps.Select(step => Row(step, words)));
    }

    private static ImmutableArray<string> Row(PlanStep step, PlanWords words) =>
    [
        CsvTable.Text(step.Id),
        CsvTable.Text(step.Kind),
        CsvTable.Text(step.Title),
        CsvTable.Text(words.Names(step.Surfaces)),
        CsvTable.Number(step.Station),
        CsvTable.Text(step.Product),
        CsvTable.Number(step.Layer),
        CsvTable.Number(step.Coat),
        CsvTable.Number(step.Of),
        CsvTable.Time(step.Start),
        CsvTable.Time(step.End),
        CsvTable.Number(step.HandsMin),
        CsvTable.Number(step.People),
        CsvTable.Time(step.LastSafeStart),
        CsvTable.Number(step.AirC),
        CsvTable.Number(step.SurfaceC),
        CsvTable.Number(step.DewPointC),
        CsvTable.Number(step.Humidity),
        step.Done ? "yes" : "no",
        CsvTable.Text(step.Why),
    ];
}
