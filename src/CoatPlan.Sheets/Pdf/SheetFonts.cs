using PdfSharp.Fonts;

namespace CoatPlan.Sheets.Pdf;

/// <summary>
/// The typefaces of the sheets, from this assembly, so that a sheet looks the same on every machine. Licences: SIL Open Font License 1.1 (Inter, NanumGothicCoding), Apache License 2.0
/// (Droid Sans Fallback).
/// </summary>
internal sealed class SheetFonts : IFontResolver
{
    /// <summary>Latin, Cyrillic and Greek: what the sheets themselves say.</summary>
    public const string Family = "Inter";

    private const string Han = "DroidSansFallback";
    private const string Hangul = "NanumGothicCoding";
    private const string Regular = "Inter-Regular";
    private const string Bold = "Inter-Bold";

    private static readonly Lock Once = new();

    /// <summary>The families, each asked for the letters that those before it lack.</summary>
    public static ImmutableArray<string> Families { get; } = [Family, Han, Hangul];

    /// <summary>Makes the families known to the PDF library, which keeps one resolver a process.</summary>
    public static void Register()
    {
        lock (Once)
        {
            GlobalFontSettings.FontResolver ??= new SheetFonts();
        }
    }

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => familyName switch
    {
        Family => new(isBold ? Bold : Regular),
        // One weight is there; the library draws its outlines thicker for bold.
        _ => new(familyName, isBold, false),
    };

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName)
    {
        using var stream = typeof(SheetFonts).Assembly.GetManifestResourceStream($"fonts/{faceName}.ttf")
            ?? throw new ArgumentException($"The typeface {faceName} is not in this assembly.", nameof(faceName));
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
