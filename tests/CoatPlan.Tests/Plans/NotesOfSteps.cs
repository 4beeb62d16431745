using System.Text.Json;
using CoatPlan.App.Desk;
using CoatPlan.Jobs;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Text;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Timetable;

namespace CoatPlan.Tests.Plans;

/// <summary>How a step is done and what to mind reaches everybody who does it: the plan's JSON and text, the work sheet, the step's page.</summary>
public class NotesOfSteps
{
    private const string WireWheel = "A wire wheel throws wire and sparks";

    private static readonly HandJob s_scaly = new()
    {
        Surfaces =
        [
            "{name: Plate, material: steel, finish: bare, condition: [scaly rust], area: 1 ft2, relief: 1, system: one}",
            "{name: Bracket, material: steel, finish: bare, condition: [light rust], area: 1 ft2, relief: 1, system: one}",
        ],
    };

    [Fact]
    public void They_are_in_the_plan_and_in_its_json()
    {
        var plan = s_scaly.Plan();

        var derust = plan.Steps.Single(step => step.Kind == "derust");
        derust.Notes.ShouldContain(note => note.StartsWith(WireWheel, StringComparison.Ordinal));
        derust.Notes.ShouldContain("Bracket: Wire-brush off the rust", "which part is done which way");
        using var json = JsonDocument.Parse(PlanJson.Write(plan));
        json.RootElement.GetProperty("steps").EnumerateArray().Single(step => step.GetProperty("kind").GetString() == "derust")
            .GetProperty("notes").EnumerateArray().Select(note => note.GetString()).ShouldBe(derust.Notes);
    }

    [Fact]
    public void They_are_printed_and_shown()
    {
        var plan = s_scaly.Plan();

        CommandRun.WithInput(s_scaly.Text, "plan", "-").Output.ShouldContain($"mind: {WireWheel}");
        TextSheet.Write(SheetSet.Of(plan).Single(sheet => sheet.Name == "work")).ReplaceLineEndings(" ").ShouldContain("A wire wheel throws");
        StepPage.Of(plan, plan.Steps.Single(step => step.Kind == "derust"), PrintUnits.Us).Lines.ShouldContain(line => line.Text.StartsWith(WireWheel, StringComparison.Ordinal));
    }

    [Fact]
    public void A_test_patch_is_asked_for_where_it_is_sprayed()
    {
        var plan = new HandJob
        {
            Products = ["thin: {preset: enamel-aerosol, lightness: black}"],
            Systems = "one: [{product: thin, coats: 2}]",
            Surfaces = ["{name: Plate, material: steel, finish: repaint, area: 1 ft2, relief: 1, system: one}"],
        }.Plan();

        plan.Steps.SelectMany(step => step.Notes).ShouldContain(note => note.Contains("spray the test patch now", StringComparison.Ordinal));
    }
}
