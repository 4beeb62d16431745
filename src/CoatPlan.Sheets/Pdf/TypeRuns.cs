using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace CoatPlan.Sheets.Pdf;

/// <summary>Which typeface a text is set in: "Fender 内側" begins in the sheets' own and ends in the first after it that has the letters.</summary>
internal static class TypeRuns
{
    // One is opened when the first letter asks for it: most documents never need the large ones.
    private static readonly ImmutableArray<Lazy<XFont>> Fonts = [.. SheetFonts.Families.Select(family => new Lazy<XFont>(() => new XFont(family, 10)))];

    /// <summary>The text in as few runs as it takes; what no typeface has stays in the first one.</summary>
    public static IEnumerable<TypeRun> Of(string text)
    {
        if (text.All(char.IsAscii))
        {
            yield return new TypeRun(text, SheetFonts.Family);
            yield break;
        }

        var begin = 0;
        var family = SheetFonts.Family;
        foreach (var at in StringInfo.ParseCombiningCharacters(text))
        {
            var next = FamilyOf(StringInfo.GetNextTextElement(text, at)) ?? SheetFonts.Family;
            if (next == family)
                continue;

            if (at > begin)
                yield return new TypeRun(text[begin..at], family);
            (begin, family) = (at, next);
        }

        yield return new TypeRun(text[begin..], family);
    }

    /// <summary>The first family that has a letter with all its marks; null where none has.</summary>
    public static string? FamilyOf(string letter)
    {
        if (letter.All(char.IsAscii))
            return SheetFonts.Family;

        var runes = letter.EnumerateRunes().ToArray();
        var index = Fonts.TakeWhile(font => !runes.All(rune => GlyphHelper.GlyphIndexFromCodePoint(rune.Value, font.Value) > 0)).Count();
        return index < Fonts.Length ? SheetFonts.Families[index] : null;
    }
}
