using System.Globalization;
using System.Text;
using CoatPlan.Sheets.Content;

namespace CoatPlan.Sheets.Pdf;

/// <summary>
/// A sheet as the typefaces can set it. Scripts that none of them has, and that would need their letters joined or turned about, are not set at all: a name in them gives way to its
/// identifier or number, other words to a question mark, and the foot of the page says so.
/// </summary>
/// <param name="Sheet">The sheet, with nothing in it that would print as an empty box.</param>
/// <param name="Substitutes">What stands for what in it, in the order of the sheet; empty where everything can be set.</param>
internal sealed record SettableSheet(Sheet Sheet, ImmutableArray<Substitute> Substitutes)
{
    private const char Unknown = '?';

    private const string Note =
        "A “?”, a key or a number stands for words in letters that the typefaces of this document lack; the text and the web page of this sheet have them.";

    /// <summary>The sheet as it can be set.</summary>
    /// <param name="sheet">The sheet.</param>
    public static SettableSheet Of(Sheet sheet)
    {
        var names = Names(sheet);
        var made = ImmutableArray.CreateBuilder<Substitute>();
        var settable = SheetTexts.Change(sheet, Settable);
        return made.Count == 0
            ? new SettableSheet(settable, [])
            : new SettableSheet(settable with { Blocks = [.. settable.Blocks.Where(block => block is not Closing), new Closing(Note), .. settable.Blocks.OfType<Closing>()] }, [.. made.Distinct()]);

        string Settable(string text)
        {
            var plain = Plain(text);
            if (IsSettable(plain))
                return plain;

            foreach (var name in names.Where(name => plain.Contains(name.Words, StringComparison.Ordinal)))
            {
                made.Add(name);
                plain = plain.Replace(name.Words, name.Printed, StringComparison.Ordinal);
            }

            return Letters(plain, made);
        }
    }

    // The longest first: a name may stand in another.
    private static ImmutableArray<Substitute> Names(Sheet sheet)
    {
        var lacking = sheet.Names.GroupBy(name => Plain(name.Name)).Where(same => !IsSettable(same.Key)).OrderByDescending(same => same.Key.Length).ToArray();
        var marked = lacking.Select(same => Letters(same.Key, null)).ToArray();
        return [.. lacking.Select((same, index) => new Substitute(same.Key, IsMostlyThere(same.Key) && marked.Count(other => other == marked[index]) == 1 ? marked[index] : Instead(same)))];
    }

    // A name that is borne twice stands for either.
    private static string Instead(IEnumerable<OtherName> same) => string.Join(" or ", same.Select(name => name.Instead.FirstOrDefault(IsSettable) ?? $"{Unknown}").Distinct());

    private static bool IsMostlyThere(string name) => 2 * Elements(name).Count(letter => IsLetter(letter) && TypeRuns.FamilyOf(letter) is not null) > Elements(name).Count(IsLetter);

    private static bool IsLetter(string letter) => Rune.IsLetter(Rune.GetRuneAt(letter, 0));

    // Letters with their marks as one where there is such a letter; and without what only steers how letters join.
    private static string Plain(string text) =>
        text.All(char.IsAscii) ? text : string.Concat(PlainText.Of(text).Normalize(NormalizationForm.FormC).EnumerateRunes().Where(rune => !IsSteering(rune)));

    // Joiners, soft hyphens and the like, and the variation selectors. Source: Unicode 16, general category Cf and block FE00.
    private static bool IsSteering(Rune rune) => Rune.GetUnicodeCategory(rune) == UnicodeCategory.Format || rune.Value is >= 0xFE00 and <= 0xFE0F;

    private static bool IsSettable(string text) => text.All(char.IsAscii) || Elements(text).All(letter => TypeRuns.FamilyOf(letter) is not null);

    // One mark for each run of letters that cannot be set, however long.
    private static string Letters(string text, ImmutableArray<Substitute>.Builder? made)
    {
        var settable = new StringBuilder(text.Length);
        var lacking = "";
        foreach (var letter in Elements(text))
        {
            if (TypeRuns.FamilyOf(letter) is null)
            {
                lacking += letter;
                continue;
            }

            End();
            settable.Append(letter);
        }

        End();
        return settable.ToString();

        void End()
        {
            if (lacking.Length == 0)
                return;

            made?.Add(new Substitute(lacking, $"{Unknown}"));
            settable.Append(Unknown);
            lacking = "";
        }
    }

    private static IEnumerable<string> Elements(string text)
    {
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
            yield return elements.GetTextElement();
    }
}
