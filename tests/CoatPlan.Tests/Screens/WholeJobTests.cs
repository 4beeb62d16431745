using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.App.Screens;
using CoatPlan.Jobs;
using CoatPlan.Tests.Commands;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

/// <summary>Each of the three users does a whole job by keys alone: from nothing, by being asked, over changes, to a saved file and written sheets.</summary>
public sealed class WholeJobTests : IDisposable
{
    private static readonly LocalDateTime Friday = new(2027, 5, 14, 16, 0);

    private readonly TempFolder folder = new();

    private readonly HeadlessUi ui;

    public WholeJobTests()
    {
        var workshop = JobSource.Workshop(Sources.Usual);
        ui = new HeadlessUi(JobFile.Unnamed(NewJob.Text(new LocalDateTime(2027, 5, 12, 9, 0))), workshop with { Plan = (ready, _) => workshop.Sketch(ready, null) });
        ui.Desk.Guide(Friday);
    }

    [Fact]
    public void A_restorer_plans_a_weekend_and_runs_it()
    {
        Say("my own vehicle", "Roadster bay", "us", "*inner fender|battery tray");
        Say("2", "steel", "factory paint", "*oily|chips", "8 ft2", "stays on the vehicle");
        Say("1", "steel", "bare", "*scaly rust", "", "comes off");
        Say("*etch-primer-aerosol|underhood-black-aerosol", "12.50", "9.50", "etch-primer, bare spots only", "underhood-black", "etch-primer", "underhood-black");
        Say("indoors", "22 ft x 20 ft x 9 ft", "800 ft3/min", "cool nights, warm days", "54 °F, 74 °F, 46 °F");
        Say("2027-05-14 16:00", "a weekend", "2027-05-16 20:00", "1");
        ui.Screen.ShouldContain("Inner fender");
        ui.Screen.ShouldContain("finish ");

        // The tray is measured: two shapes add up.
        ui.Press(Key.CursorDown);
        ui.Type("i");
        Open("shape");
        ui.Press(Key.End, Key.Enter);
        Say("panel", "12 in", "8 in");
        ui.Press(Key.End);
        ui.Type("a");
        Say("channel", "2 in", "1 in", "12 in");
        ui.Screen.ShouldContain("+");
        ui.Press(Key.Esc);
        Choose("area");
        ui.Press(Key.Delete);
        ui.Desk.Job.ShouldNotBeNull().Surfaces[1].Shapes.Length.ShouldBe(2);

        // A mask, from the same page.
        Open("mask");
        ui.Press(Key.End, Key.Enter);
        Say("ground strap", "ground", "6 in");
        ui.Desk.Job!.Surfaces[1].Masks.ShouldHaveSingleItem().What.ShouldBe("ground strap");

        Save("roadster.job.yaml");
        ui.Type("2");
        ui.Press(Key.Home, Key.Space);
        ui.Press(Key.Enter, Key.Enter, Key.Enter);
        ui.Desk.Job!.Done.ShouldHaveSingleItem();
        ui.Screen.ShouldContain("x ");

        WriteSheets("work.pdf", "shopping-list.pdf", "calendar.ics");
        SavedFileSays("roadster.job.yaml", done: 1);
    }

    [Fact]
    public void A_shop_quotes()
    {
        Say("a customer", "Utility van front", "us", "*radiator support|another piece");
        Say("1", "steel", "repaint", "*road grime|chips", "6 ft2", "stays on the vehicle");
        Say("Fan shroud", "1", "polyolefin", "bare", "*oily", "7 ft2", "comes off");
        Say("*enamel-aerosol|etch-primer-aerosol|polyolefin-promoter-aerosol|trim-coating-aerosol", "7.80", "12.40", "14.20", "10.60");
        Say("etch-primer, bare spots only", "enamel", "nothing more", "polyolefin-promoter", "trim-coating", "nothing more");
        Say("indoors", "40 ft x 24 ft x 14 ft", "3000 ft3/min", "the same all the time", "66 °F, 35 %");
        Say("2027-03-08 08:00", "a shop's week", "", "2", "85 /h", "25 %");
        ui.Screen.ShouldContain("quote ");

        ui.Type("7");
        Open("prices");
        Set("tax", "8.25 %");
        Open("consumables");
        ui.Press(Key.End, Key.Enter);
        Say("masking tape", "5.60", "1");
        ui.Desk.Job.ShouldNotBeNull().Prices.ShouldNotBeNull().Consumables.ShouldHaveSingleItem();

        WriteSheets("quote.pdf", "shopping-list.csv");
        Save("van.job.yaml");
        SavedFileSays("van.job.yaml", done: 0);
    }

    [Fact]
    public void A_teacher_plans_a_class()
    {
        Say("a class", "Refinishing lab", "metric", "*another piece");
        Say("Steel panel", "1", "steel", "bare", "*light rust", "0.06 m2");
        Say("*etch-primer-aerosol|enamel-aerosol", "", "", "etch-primer", "enamel");
        Say("indoors", "12 m x 9 m x 3.5 m", "60 m3/min", "the same all the time", "21 °C, 50 %");
        Say("2027-09-06 08:00", "school periods", "2027-09-24 16:00", "3", "2");
        ui.Desk.Job.ShouldNotBeNull().Crew.Stations.ShouldBe(3);

        ui.Type("7");
        Open("crew", "hours");
        ui.Press(Key.End, Key.Enter);
        Say("2027-09-13", "none");
        ui.Press(Key.Esc, Key.Esc);
        Open("place");
        Set("spray-spots", "2");
        ui.Type("4");
        ui.Screen.ShouldContain("stn 3");

        WriteSheets("station-handouts.pdf", "masking-and-safety.pdf");
        Save("class.job.yaml");
        SavedFileSays("class.job.yaml", done: 0);
    }

    public void Dispose()
    {
        ui.Dispose();
        folder.Dispose();
    }

    // An answer is typed over what stands there, or narrows the list to the row that it names; with a star, several rows are marked.
    private void Say(params string[] answers)
    {
        foreach (var answer in answers)
        {
            var asks = ui.Desk.Typing?.Asks ?? ui.Desk.Picking?.Asks ?? "nothing";
            if (ui.Desk.Typing is { } edit)
            {
                if (answer.Length > 0 || edit.Typed.Length == 0 || ui.Desk.GuideAsks?.Typed.Length == 0)
                {
                    ui.Press(Key.A.WithCtrl, Key.Delete);
                    ui.Type(answer);
                }

                ui.Press(Key.Enter);
                ui.Desk.Typing.ShouldNotBe(edit, $"{asks} {answer}: {edit.Complaint}");
            }
            else
            {
                Pick(answer.TrimStart('*').Split('|'), answer.StartsWith('*'));
            }
        }
    }

    private void Pick(string[] words, bool several)
    {
        var picker = ui.Desk.Picking.ShouldNotBeNull(string.Join(", ", words));
        foreach (var word in words)
        {
            // Space marks where several can be picked, so that the list is narrowed by the first word alone.
            var narrows = several ? word.Split(' ')[0] : word;
            ui.Type(narrows);
            picker.Rows.ShouldNotBeEmpty($"{picker.Asks} {word}");
            for (var down = 0; picker.Rows.Length > 0 && picker.Rows[picker.At].Word != word && down < picker.Rows.Length; down++)
                ui.Press(Key.CursorDown);
            picker.Rows[picker.At].Word.ShouldBe(word, picker.Asks);
            if (!several)
                continue;

            ui.Press(Key.Space);
            ui.Press([.. Enumerable.Repeat(Key.Backspace, narrows.Length)]);
        }

        ui.Press(Key.Enter);
        ui.Desk.Picking.ShouldNotBe(picker, picker.Complaint);
    }

    private void Open(params string[] names)
    {
        foreach (var name in names)
        {
            Choose(name);
            ui.Press(Key.Enter);
        }
    }

    private void Choose(string name)
    {
        ui.Press(Key.Home);
        for (var down = 0; down < 60 && ui.Desk.Outline.Rows[ui.Desk.FieldAt].Name != name; down++)
            ui.Press(Key.CursorDown);
        ui.Desk.Outline.Rows[ui.Desk.FieldAt].Name.ShouldBe(name);
    }

    private void Set(string name, string value)
    {
        Choose(name);
        ui.Press(Key.Enter);
        Say(value);
    }

    private void Save(string name)
    {
        ui.Press(Key.S.WithCtrl);
        Say(Path.Combine(folder.Path, name));
        ui.Desk.Unsaved.ShouldBeFalse();
    }

    private void WriteSheets(params string[] expected)
    {
        ui.Type("6");
        ui.Type("w");
        Say(Path.Combine(folder.Path, "sheets"));
        ui.Screen.ShouldContain("written:");
        var written = Directory.GetFiles(Path.Combine(folder.Path, "sheets")).Select(path => Path.GetFileName(path)).ToArray();
        foreach (var name in expected)
            written.ShouldContain(name);
    }

    private void SavedFileSays(string name, int done)
    {
        if (ui.Desk.Unsaved)
            ui.Press(Key.S.WithCtrl);
        ui.Press(Key.Q.WithCtrl);
        ui.Desk.Left.ShouldBeTrue();
        var reading = JobReader.Read(File.ReadAllText(Path.Combine(folder.Path, name)), name, Vocabulary.Contract);
        reading.Problems.ShouldBeEmpty();
        reading.Job.ShouldNotBeNull().Done.Length.ShouldBe(done);
        TotalsScreen.Text(ui.Desk).ShouldContain("can");
    }
}
