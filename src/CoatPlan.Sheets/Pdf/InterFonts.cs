using PdfSharp.Fonts;

namespace CoatPlan.Sheets.Pdf;

/// <summary>The typeface of the sheets, from this assembly, so that a sheet looks the same on every machine. Licence: SIL Open Font License 1.1.</summary>
internal sealed class InterFonts : IFontResolver
{
    /// <summary>The family's name.</summary>
    public const string Family = "Inter";

    private const string Regular = "Inter-Regular";
    private const string Bold = "Inter-Bold";

    private static readonly Lock Once = new();

    /// <summary>Makes the family known to the PDF library, which keeps one resolver a process.</summary>
    public static void Register()
    {
        lock (Once)
        {
            GlobalFontSettings.FontResolver ??= new InterFonts();
        }
    }

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? Bold : Regular);

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName)
    {
        using var stream = typeof(InterFonts).Assembly.GetManifestResourceStream($"fonts/{faceName}.ttf")
            ?? throw new ArgumentException($"The typeface {faceName} is not in this assembly.", nameof(faceName));
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
