using System.Diagnostics;
using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Html;
using CoatPlan.Tests.Commands;
using UglyToad.PdfPig;

namespace CoatPlan.Tests.Sheets;

/// <summary>The page in a real browser, where one is there: on a telephone and on paper.</summary>
public class BrowserTests
{
    private const string Browser = "chromium";

    private const int PhoneWidth = 390;

    // The page itself forbids scripts; its copy is let ask for its own measures.
    private const string Measures = """
        <script>
        const small = [...document.querySelectorAll('section p, section li, section label, section td')].map(e => parseFloat(getComputedStyle(e).fontSize));
        document.title = JSON.stringify({ wide: document.documentElement.scrollWidth, loaded: performance.getEntriesByType('resource').length, least: Math.min(...small) });
        </script>
        """;

    [Fact]
    public void On_a_telephone_nothing_runs_off_the_side_nothing_is_small_and_nothing_is_loaded()
    {
        Assert.SkipUnless(OtherProgram.IsThere(Browser), $"{Browser} is not here");
        using var folder = new TempFolder();
        foreach (var plan in (Plan[])[SheetSamples.Roadster(), SheetSamples.Class(), SheetSamples.Many(12)])
        {
            var page = Regex.Replace(HtmlPage.Write(plan.Job, SheetSet.Of(plan)), "<meta http-equiv[^>]*>", "").Replace("</body>", Measures + "</body>");
            // A window cannot be made as narrow as a telephone; a frame can.
            folder.File("page.html", page);
            folder.File("frame.html", $$"""
                <iframe id="f" src="page.html" style="width: {{PhoneWidth}}px; height: 844px; border: 0" onload="document.title = document.getElementById('f').contentDocument.title"></iframe>
                """);

            var shown = Run(folder.Path, "--allow-file-access-from-files", "--dump-dom", $"file://{folder.Path}/frame.html");
            var measured = JsonDocument.Parse(WebUtility.HtmlDecode(Regex.Match(shown, "<title>(.*?)</title>").Groups[1].Value)).RootElement;

            measured.GetProperty("wide").GetInt32().ShouldBeLessThanOrEqualTo(PhoneWidth, plan.Job);
            measured.GetProperty("loaded").GetInt32().ShouldBe(0);
            measured.GetProperty("least").GetDouble().ShouldBeGreaterThanOrEqualTo(16);
        }
    }

    [Fact]
    public void On_paper_each_sheet_begins_a_page_and_no_word_lies_outside()
    {
        Assert.SkipUnless(OtherProgram.IsThere(Browser), $"{Browser} is not here");
        using var folder = new TempFolder();
        var plan = SheetSamples.Class();
        folder.File("page.html", HtmlPage.Write(plan.Job, SheetSet.Of(plan)));

        Run(folder.Path, "--no-pdf-header-footer", $"--print-to-pdf={folder.Path}/page.pdf", $"file://{folder.Path}/page.html");
        using var document = PdfDocument.Open(Path.Combine(folder.Path, "page.pdf"));
        var pages = document.GetPages().ToArray();

        pages.SelectMany(page => page.Letters.Select(letter => (page, box: letter.BoundingBox))).ShouldAllBe(one => one.box.Left >= 0 && one.box.Right <= one.page.Width && one.box.Bottom >= 0 && one.box.Top <= one.page.Height);
        var heads = pages.Select(page => string.Join(' ', page.GetWords().Take(3).Select(word => word.Text))).ToArray();
        foreach (var sheet in SheetSet.Of(plan).Skip(1))
            heads.ShouldContain(head => head.StartsWith(sheet.Title, StringComparison.Ordinal), sheet.Title);
        heads.Count(head => Regex.IsMatch(head, @"^Station \d")).ShouldBe(5);
    }

    private static string Run(string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo(
            Browser,
            ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", $"--user-data-dir={folder}/profile", .. arguments])
        {
            WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{Browser} did not start");
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        process.ExitCode.ShouldBe(0, errors.GetAwaiter().GetResult());
        return output;
    }
}
