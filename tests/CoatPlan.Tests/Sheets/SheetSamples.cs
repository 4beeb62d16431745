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

    /// <summary>The sample weekend with as many surfaces, each masked, some with names that are long or in other scripts.</summary>
    public static Plan Many(int surfaces)
    {
        string[] names = ["Inner fender", new string('W', 150), "Крыло внутреннее", "Εσωτερικό φτερό", "内側フェンダー", "a-b-c " + new string('x', 60)];
        var plan = SamplePlan.Weekend();
        ImmutableArray<PlanSurface> many = [.. Enumerable.Range(0, surfaces).Select(i => plan.Surfaces[0] with { Id = $"s{i}", Name = names[i % names.Length] })];
        return plan with
        {
            Surfaces = many,
            Supplies = [.. plan.Supplies.SelectMany(supply => names.Select(name => supply with { Name = name, Buy = 2, Cans = 12 }))],
            Masks = [.. many.Select(surface => new PlanMask(surface.Id, surface.Name, "wiring", 1.83, 0.4))],
            Steps = [.. plan.Steps.Select(step => step with { Surfaces = [.. many.Select(surface => surface.Id)] })],
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
