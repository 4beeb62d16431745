using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.Tests.Desk;
using CoatPlan.Tests.Plans;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

/// <summary>Keeps text pictures of every place, made by the program, in docs/screens; set COATPLAN_PICTURES to write them anew.</summary>
public sealed class PicturesTests
{
    private const string Roadster = """
        coatplan: 1
        job: Roadster engine bay
        start: 2027-05-14 16:00
        finish-by: 2027-05-16 20:00
        place:
          room: {length: 22 ft, width: 20 ft, height: 9 ft}
          exhaust: 800 ft3/min
          ignition: [gas water heater]
          weather:
            daily: {low: 54 °F, high: 74 °F, dew-point: 46 °F}
        crew:
          people: 1
          hours:
            Fri: 16:00-21:00
            Sat-Sun: [08:00-12:00, 13:00-18:00]
        products:
          black: {preset: underhood-black-aerosol, name: "Satin black, underhood", package: {net: 12 oz, price: 9.50}}
          etch: {preset: etch-primer-aerosol, name: Etch primer}
        systems:
          black-over-paint: [{product: etch, coats: 1, only: bare}, {product: black, coats: 3}]
          black-on-metal: [{product: etch, coats: 1}, {product: black, coats: 3}]
        surfaces:
          - name: Inner fender
            count: 2
            material: steel
            finish: factory paint
            condition: [oily, chips]
            area: 8 ft2
            stays: true
            system: black-over-paint
            mask: [{what: wiring loom, kind: wiring, edge: 6 ft}]
          - name: Battery tray
            material: steel
            finish: bare
            condition: [scaly rust]
            area: 1.33 ft2
            system: black-on-metal

        """;

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_pictures_in_the_docs_are_what_the_program_shows(int width, int height)
    {
        using var ui = new HeadlessUi(JobFile.Unnamed(Roadster), Desks.Quick with { Sketch = (_, _) => PlannedJob.Alone(SamplePlan.Weekend()), Plan = (_, _) => PlannedJob.Alone(SamplePlan.Weekend()) }, width, height);
        foreach (var (key, name) in new[] { ("1", "surfaces"), ("2", "sequence"), ("3", "supplies"), ("4", "timeline"), ("5", "air"), ("6", "sheets"), ("7", "fields") })
        {
            ui.Type(key);
            if (name is "sequence" or "timeline")
                ChooseFirstCoat(ui);
            Keep($"{name}-{width}x{height}.txt", ui.Picture);
        }
    }

    private static void ChooseFirstCoat(HeadlessUi ui)
    {
        ui.Press(Key.Home);
        while (ui.Desk.Step is { Spray: false })
            ui.Press(ui.Desk.Place == DeskPlace.Timeline ? Key.CursorRight : Key.CursorDown);
    }

    private static void Keep(string name, string picture)
    {
        var path = Path.Combine(Repository.Root, "docs", "screens", name);
        if (Environment.GetEnvironmentVariable("COATPLAN_PICTURES") is { Length: > 0 })
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, picture);
        }

        File.Exists(path).ShouldBeTrue($"{name} is missing; COATPLAN_PICTURES=1 writes it");
        picture.ShouldBe(File.ReadAllText(path), $"{name} is not what the program shows; COATPLAN_PICTURES=1 writes it anew");
    }
}
