using System.Text;
using CoatPlan.Sheets.Calendar;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Csv;
using CoatPlan.Sheets.Html;
using CoatPlan.Sheets.Pdf;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App;

/// <summary>Writes the sheets of a plan into a folder.</summary>
internal static class SheetFiles
{
    /// <summary>Writes every sheet as PDF and as text, all of them as one page for a phone, the steps as a calendar, and the lists as CSV.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="folder">The folder; made where it does not exist.</param>
    /// <param name="paper">The paper.</param>
    /// <returns>What was written.</returns>
    /// <exception cref="BadInputException">The folder cannot be written to.</exception>
    /// <exception cref="MachineException">The disk is full or broken.</exception>
    public static WrittenSheets Write(Plan plan, string folder, PaperSize paper)
    {
        var isNew = !Directory.Exists(folder);
        try
        {
            Directory.CreateDirectory(folder);
            var written = ImmutableArray.CreateBuilder<string>();
            var sheets = SheetSet.Of(plan);
            foreach (var sheet in sheets)
            {
                // Dated by the job and not by the clock: the same job gives the same bytes.
                written.Add(Put(folder, $"{sheet.Name}.pdf", PdfSheet.Write(sheet, paper, plan.Start)));
                written.Add(Put(folder, $"{sheet.Name}.txt", Encoding.UTF8.GetBytes(TextSheet.Write(sheet))));
            }

            written.Add(Put(folder, "sheets.html", Encoding.UTF8.GetBytes(HtmlPage.Write(plan.Job, sheets))));
            if (PlanCalendar.Write(plan) is { } calendar)
                written.Add(Put(folder, "calendar.ics", Encoding.UTF8.GetBytes(calendar)));
            written.Add(Put(folder, "shopping-list.csv", Marked(ShoppingList.Write(plan))));
            written.Add(Put(folder, "steps.csv", Marked(StepList.Write(plan))));
            return new WrittenSheets(written.ToImmutable(), [.. sheets.SelectMany(sheet => PdfSheet.Substitutes(sheet)).Distinct()]);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            if (isNew)
                RemoveEmpty(folder);
            throw WriteFailure.Of(folder, exception);
        }
    }

    private static void RemoveEmpty(string folder)
    {
        try
        {
            Directory.Delete(folder);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // It was never made, or holds what was written before the failure.
        }
    }

    // Spreadsheets take a file without the mark for one in the machine's old code page, and names in other scripts come out broken.
    private static byte[] Marked(string text) => [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)];

    private static string Put(string folder, string name, byte[] content)
    {
        // Not through a link: nothing outside the folder is written.
        var path = Path.Combine(folder, name);
        AtomicFile.Replace(path, content);
        return path;
    }
}
