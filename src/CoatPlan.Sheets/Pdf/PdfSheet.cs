using CoatPlan.Sheets.Content;
using PdfSharp.Pdf;

namespace CoatPlan.Sheets.Pdf;

/// <summary>A sheet as a PDF: black on white, typeface embedded, pages numbered, headings in the outline.</summary>
public static class PdfSheet
{
    /// <summary>Writes a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="dated">The date that the document carries: the plan's start, since no clock is asked.</param>
    public static byte[] Write(Sheet sheet, PaperSize paper, LocalDateTime dated)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        InterFonts.Register();

        using var document = new PdfDocument();
        document.Info.Title = $"{sheet.Title}: {sheet.Job}";
        document.Info.Author = "CoatPlan";
        document.Info.Subject = sheet.Title;
        document.Info.CreationDate = dated.ToDateTimeUnspecified();
        document.Language = "en-US";
        var pen = new SheetPen(document, sheet, paper);
        foreach (var block in sheet.Blocks)
            PdfBlocks.Draw(pen, block);
        pen.NumberPages();

        using var bytes = new MemoryStream();
        document.Save(bytes);
        return bytes.ToArray();
    }
}
