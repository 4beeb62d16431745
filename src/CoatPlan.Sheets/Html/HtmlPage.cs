using System.Text;
using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Html;

/// <summary>The sheets as one page for a phone on the bench: it loads nothing, runs nothing and prints each sheet on paper of its own.</summary>
public static class HtmlPage
{
    private const string Style = """
        body { font: 1.125rem/1.45 system-ui, sans-serif; color: #000; background: #fff; max-width: 52rem; margin: 0 auto; padding: 0.75rem; overflow-wrap: anywhere; }
        nav a { display: inline-block; padding: 0.6rem 0.75rem; border: 1px solid #000; color: #000; }
        h1 { font-size: 1.5rem; } h2 { font-size: 1.6rem; border-bottom: 3px solid #000; margin-top: 2.5rem; } h3 { font-size: 1.25rem; }
        .notice { border: 3px solid #000; padding: 0.75rem; font-size: 1.35rem; font-weight: bold; }
        .table { overflow-x: auto; } table { border-collapse: collapse; width: 100%; }
        th, td { text-align: left; vertical-align: top; padding: 0.35rem 0.5rem; border-bottom: 1px solid #000; overflow-wrap: normal; } .number { text-align: right; }
        .step { border: 1px solid #000; padding: 0.6rem; margin: 0.75rem 0; break-inside: avoid; } .step label { font-weight: bold; font-size: 1.25rem; }
        .step p { margin: 0.35rem 0; } input { width: 1.5rem; height: 1.5rem; vertical-align: middle; }
        .picture { overflow-x: auto; } svg { display: block; width: 100%; min-width: 46rem; break-inside: avoid; } pre { overflow-x: auto; font-size: 0.8rem; }
        .title { font-weight: bold; font-size: 1.25rem; } .page { font-weight: bold; font-size: 1.4rem; border-top: 3px solid #000; margin-top: 2rem; }
        .tags { display: grid; grid-template-columns: repeat(auto-fill, minmax(18rem, 1fr)); } .tag { border: 2px dashed #000; padding: 0.75rem; break-inside: avoid; } .tag p { margin: 0.4rem 0; } .tag .notice { float: left; margin: 0 0.75rem 0.25rem 0; font-size: 2rem; }
        .write { display: inline-block; min-width: 5rem; border-bottom: 1px solid #000; }
        @media print { nav { display: none; } body { font-size: 10pt; max-width: none; padding: 0; } svg { min-width: 0; } section { break-before: page; } section:first-of-type { break-before: auto; } .page { break-before: page; } h2 + .page { break-before: auto; } h3 { break-after: avoid; } }
        """;

    /// <summary>Writes the page; every word of the sheets is escaped.</summary>
    /// <param name="job">The job's name.</param>
    /// <param name="sheets">The sheets, in the order of the page.</param>
    public static string Write(string job, ImmutableArray<Sheet> sheets)
    {
        var page = new StringBuilder();
        page.Append("<!DOCTYPE html>\n<html lang=\"en-US\">\n<head>\n<meta charset=\"utf-8\" />\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />\n")
            // A name that slipped through all the same would still load and run nothing.
            .Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\" />\n")
            .Append("<title>").Append(HtmlBlocks.Escaped(job)).Append("</title>\n<style>\n").Append(Style).Append("\n</style>\n</head>\n<body>\n");
        HtmlBlocks.Element(page, "h1", job);
        page.Append("<nav>");
        foreach (var sheet in sheets)
            page.Append("<a href=\"#").Append(sheet.Name).Append("\">").Append(HtmlBlocks.Escaped(sheet.Title)).Append("</a> ");
        page.Append("</nav>\n");
        foreach (var sheet in sheets)
            Section(page, sheet);
        return page.Append("</body>\n</html>\n").ToString();
    }

    private static void Section(StringBuilder page, Sheet sheet)
    {
        page.Append("<section id=\"").Append(sheet.Name).Append("\">\n");
        HtmlBlocks.Element(page, "h2", sheet.Title);
        foreach (var block in sheet.Blocks)
            HtmlBlocks.Write(page, block);
        page.Append("</section>\n");
    }
}
