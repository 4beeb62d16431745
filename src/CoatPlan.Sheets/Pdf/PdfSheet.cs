using CoatPlan.Sheets.Content;
using PdfSharp.Pdf;

namespace CoatPlan.Sheets.Pdf;

/// <summary>A sheet as a PDF: black on white, typeface embedded, pages numbered, headings in the outline.</summary>
public static class PdfSheet
{
    private const int MostPagesToShrink = 3;

    private static readonly ImmutableArray<double> BodyTypes = [9.5, 9, 8.5];

    private static readonly ImmutableArray<double> SmallTypes = [9, 8.5, 8, 7.5];

    /// <summary>Writes a sheet; set as large as keeps it on one page, what stands in columns never under 7.5 pt and everything else never under 8.5 pt.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="dated">The date that the document carries: the plan's start, since no clock is asked.</param>
    public static byte[] Write(Sheet sheet, PaperSize paper, LocalDateTime dated)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        SheetFonts.Register();
        var tries = sheet.Blocks.Any(block => block is Columns) ? SmallTypes.Select(size => new TypeSizes(BodyTypes[0], size)) : BodyTypes.Select(size => new TypeSizes(size, SmallTypes[0]));
        var settable = SettableSheet.Of(sheet).Sheet;
        PdfDocument? kept = null;
        foreach (var sizes in tries)
        {
            var tried = Drawn(sheet, settable, paper, dated, sizes);
            // Where not even the smallest type makes it one page, what shares columns stays small and everything else large.
            if (tried.PageCount == 1 || kept is null || sheet.Blocks.Any(block => block is Columns))
                kept = tried;
            if (tried.PageCount is 1 or > MostPagesToShrink)
                break;
        }

        return Bytes(kept!);
    }

    /// <summary>What stands for words whose letters the typefaces lack; the document says at its foot that something does.</summary>
    /// <param name="sheet">The sheet.</param>
    public static ImmutableArray<Substitute> Substitutes(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        SheetFonts.Register();
        return SettableSheet.Of(sheet).Substitutes;
    }

    private static PdfDocument Drawn(Sheet sheet, Sheet settable, PaperSize paper, LocalDateTime dated, TypeSizes sizes)
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
        var pen = new SheetPen(document, settable, paper, sizes.Body);
        PdfBlocks.Draw(pen, settable.Blocks, sizes.Small);
        pen.NumberPages();
        return document;
    }

    private static byte[] Bytes(PdfDocument document)
    {
        using var bytes = new MemoryStream();
        document.Save(bytes);
        return FinishedPdf.Of(bytes.ToArray());
    }

    private sealed record TypeSizes(double Body, double Small);
}
