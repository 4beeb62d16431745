using System.Collections.Concurrent;
using CoatPlan.Plans;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Pdf;
using CoatPlan.Sheets.Text;
using CoatPlan.Tests.Plans;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace CoatPlan.Tests.Sheets;

/// <summary>Plans on paper, and the way back.</summary>
internal static class SheetSamples
{
    private static readonly ConcurrentDictionary<string, Plan> s_examples = new(StringComparer.Ordinal);

    private static readonly ImmutableArray<string> s_names =
    [
        "Inner fender", new string('W', 150), "Крыло внутреннее", "Εσωτερικό φτερό", "内側フェンダー", "a-b-c " + new string('x', 60), "앞쪽 프레임", "Łódź Đặng côté", new string('漢', 90), "قوس أمامي",
    ];

    /// <summary>The sample weekend with as many surfaces, each masked and every second taken off, some with names that are long or in other scripts.</summary>
    public static Plan Many(int surfaces)
    {
        var plan = SamplePlan.Weekend();
        ImmutableArray<PlanSurface> many =
        [
            .. Enumerable.Range(0, surfaces).Select(i => plan.Surfaces[0] with { Id = $"s{i}", Name = s_names[i % s_names.Length], Stays = i % 2 == 1, Tag = i % 2 == 1 ? null : i / 2 + 1, Count = 1 + (i % 3 / 2) }),
        ];
        return plan with
        {
            Surfaces = many,
            Supplies = [.. plan.Supplies.SelectMany(supply => s_names.Select(name => supply with { Name = name, Buy = 2, Cans = 12 }))],
            Labels = [.. s_names.Select((name, index) => plan.Labels[0] with { Product = $"p{index}", Name = name })],
            Masks = [.. many.Select(surface => new PlanMask(surface.Id, surface.Name, "wiring", 1.83, 0.4))],
            Steps = [.. plan.Steps.Select(step => step with { Surfaces = [.. many.Select(surface => surface.Id)] })],
            Quote = plan.Quote! with { Lines = [.. many.Select(surface => plan.Quote!.Lines[0] with { Surface = surface.Id })] },
        };
    }

    /// <summary>The same for a class: every step at each of two stations, on the surfaces one by one.</summary>
    public static Plan ManyAtStations(int surfaces)
    {
        var plan = Many(surfaces);
        return plan with
        {
            Steps =
            [
                .. from station in Enumerable.Range(1, 2)
                   from step in plan.Steps
                   from surface in step.Coat is null ? [step.Surfaces] : step.Surfaces.Select(surface => ImmutableArray.Create(surface))
                   select step with { Id = $"{step.Id}/{station}/{surface[0]}", Station = station, Surfaces = surface, After = [] },
            ],
        };
    }

    /// <summary>The plan of the weekend job that comes with the program.</summary>
    public static Plan Roadster() => Example("roadster-weekend");

    /// <summary>The plan of the quote that comes with the program.</summary>
    public static Plan Van() => Example("van-quote");

    /// <summary>The plan of the class that comes with the program.</summary>
    public static Plan Class() => Example("class-panels");

    private static Plan Example(string name) => s_examples.GetOrAdd(name, _ =>
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "presets", "jobs", $"{name}.job.yaml"));
        return Planner.Plan(JobIntake.Read(text, "job", Trade.Standard, _ => FileText.Unreadable("it is not needed")).Ready!);
    });

    public static ImmutableArray<Page> Pages(Sheet sheet, PaperSize paper)
    {
        var document = PdfDocument.Open(PdfSheet.Write(sheet, paper, SamplePlan.At(14, 16, 0)));
        return [.. document.GetPages()];
    }

    public static string Words(ImmutableArray<Page> pages) => string.Join(' ', pages.SelectMany(page => page.GetWords()).Select(word => word.Text));

    public static string Text(Sheet sheet) => TextSheet.Write(sheet);
}
