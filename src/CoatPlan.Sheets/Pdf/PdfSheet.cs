using CoatPlan.Sheets.Content;
using PdfSharp.Pdf;

namespace CoatPlan.Sheets.Pdf;

/// <summary>A sheet as a PDF: black on white, typeface embedded, pages numbered, headings in the outline.</summary>
public static class PdfSheet
{
    private static readonly ImmutableArray<double> SmallTypes = [9, 8.5, 8, 7.5];

    /// <summary>Writes a sheet; what stands in columns is set as large as keeps the sheet on one page, never under 7.5 pt.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="dated">The date that the document carries: the plan's start, since no clock is asked.</param>
    public static byte[] Write(Sheet sheet, PaperSize paper, LocalDateTime dated)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        InterFonts.Register();
        var sizes = sheet.Blocks.Any(block => block is Columns) ? SmallTypes : [SmallTypes[0]];
        foreach (var size in sizes.SkipLast(1))
        {
            using var tried = Drawn(sheet, paper, dated, size);
            if (tried.PageCount == 1)
                return Bytes(tried);
        }

        using var last = Drawn(sheet, paper, dated, sizes[^1]);
        return Bytes(last);
    }

    private static PdfDocument Drawn(Sheet sheet, PaperSize paper, LocalDateTime dated, double smallType)
    {
        var document = new PdfDocument();
        document.Info.Title = PlainText.Of($"{sheet.Title}: {sheet.Job}");
        document.Info.Author = "CoatPlan";
        document.Info.Subject = sheet.Title;
        document.Info.Creator = "CoatPlan";
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
        document.Info.CreationDate = dated.ToDateTimeUnspecified();
        document.Language = "en-US";
        var pen = new SheetPen(document, sheet, paper);
        foreach (var block in sheet.Blocks)
            PdfBlocks.Draw(pen, block, smallType);
        pen.NumberPages();
        return document;
    }

    private static byte[] Bytes(PdfDocument document)
    {
        using var bytes = new MemoryStream();
        document.Save(bytes);
        return FinishedPdf.Of(bytes.ToArray());
    }
}
