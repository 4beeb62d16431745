using System.Globalization;
using System.Text;

namespace CoatPlan.Quantities;

/// <summary>Takes a written quantity apart into numbers and units, without asking yet what was due.</summary>
internal ref struct QuantityScanner
{
    /// <summary>Longer texts are not quantities, and are not looked through.</summary>
    public const int LongestText = 200;

    private static readonly (string Word, int Bound)[] BoundWords =
    [
        ("<=", -1), ("<", -1), ("≤", -1), ("up to ", -1), ("at most ", -1), ("under ", -1), ("below ", -1), ("max ", -1),
        (">=", 1), (">", 1), ("≥", 1), ("at least ", 1), ("over ", 1), ("above ", 1), ("from ", 0),
    ];

    private readonly string tried;
    private readonly string text;
    private readonly Dimension due;
    private int at;
    private QuantityTrouble? trouble;

    private QuantityScanner(string tried, Dimension due)
    {
        this.tried = tried;
        this.due = due;
        text = tried.Length <= LongestText ? Plain(tried) : "";
    }

    /// <summary>Takes a text apart.</summary>
    /// <param name="tried">The text as written.</param>
    /// <param name="due">What is due, for the trouble.</param>
    public static QuantityReading<ScannedQuantity> Scan(string tried, Dimension due)
    {
        if (tried.Length > LongestText) return new(default, new(QuantityTroubleKind.NotANumber, due, tried[..LongestText]));
        var scanner = new QuantityScanner(tried, due);
        var scanned = scanner.Whole();
        return new(scanned, scanner.trouble);
    }

    private ScannedQuantity Whole()
    {
        if (text.Length == 0) return Fail(QuantityTroubleKind.Empty);
        int bound = Bound();
        var first = Sum();
        if (trouble is not null) return default;
        SkipSpace();
        ImmutableArray<QuantityTerm> second = [];
        if (bound == 0 && Separator())
        {
            SkipSpace();
            Bound();
            second = Sum();
            if (trouble is not null) return default;
            SkipSpace();
        }

        if (at < text.Length) return Fail(QuantityTroubleKind.Trailing, word: text[at..]);
        if (!second.IsEmpty && first is [{ Unit: null } bare]) first = [bare with { Unit = second[^1].Unit }];
        return new(first, second, bound);
    }

    private int Bound()
    {
        foreach (var (word, bound) in BoundWords)
        {
            if (!StandsHere(word)) continue;
            at += word.Length;
            SkipSpace();
            return bound;
        }

        return 0;
    }

    private bool Separator()
    {
        foreach (string word in (ReadOnlySpan<string>)["..", "-", "to "])
        {
            if (!StandsHere(word)) continue;
            at += word.Length;
            return true;
        }

        return false;
    }

    private ImmutableArray<QuantityTerm> Sum()
    {
        var terms = ImmutableArray.CreateBuilder<QuantityTerm>();
        do
        {
            double number = Number();
            if (trouble is not null) return [];
            var unit = TakeUnit(terms);
            if (trouble is not null) return [];
            terms.Add(new(number, unit));
            if (unit is null) break;
            SkipSpace();
            if (StandsHere("and ")) at += "and ".Length;
        }
        while (at < text.Length && StartsNumber(at));
        return terms.ToImmutable();
    }

    private Unit? TakeUnit(ImmutableArray<QuantityTerm>.Builder before)
    {
        int numberEnd = at;
        SkipSpace();
        if (at == text.Length || text[at] == '-' || StandsHere("to ") || StandsHere(".."))
        {
            at = numberEnd;
            return null;
        }

        if (UnitTable.LongestAt(text, at) is { } found)
        {
            at += found.Length;
            bool minutesAfterHours = found.Unit.Name is UnitsNet.Units.LengthUnit.Meter
                && before.Count > 0 && before[^1].Unit is { Dimension: Dimension.Duration };
            return minutesAfterHours ? new Unit(Dimension.Duration, null, 60) : found.Unit;
        }

        int end = at;
        while (end < text.Length && text[end] is not (' ' or '-')) end++;
        string word = text[at..Math.Max(end, at + 1)];
        Fail(word[0] == ',' ? QuantityTroubleKind.Comma : QuantityTroubleKind.UnknownUnit, word: word);
        return null;
    }

    private double Number()
    {
        SkipSpace();
        int start = at;
        bool negative = false;
        if (at < text.Length && text[at] is '-' or '+')
        {
            negative = text[at] == '-';
            at++;
            SkipSpace();
        }

        string whole = Digits(out bool grouped);
        if (trouble is not null) return 0;
        if (at + 1 < text.Length && text[at] == '.' && char.IsAsciiDigit(text[at + 1]))
        {
            at++;
            whole += "." + PlainDigits();
            grouped = true;
        }

        if (whole.Length == 0)
        {
            at = start;
            Fail(QuantityTroubleKind.NotANumber);
            return 0;
        }

        whole += Exponent();
        double value = double.Parse(whole, NumberStyles.Float, CultureInfo.InvariantCulture);
        if (!grouped) value = WithFraction(value);
        if (trouble is not null) return 0;
        if (!double.IsFinite(value)) Fail(QuantityTroubleKind.TooLarge);
        return negative ? -value : value;
    }

    private double WithFraction(double whole)
    {
        if (at < text.Length && text[at] == '/' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]))
        {
            at++;
            return Over(whole);
        }

        // "3 1/4" and "3-1/4" are three and a quarter; "0-1/2" can only be a range.
        bool joined = at < text.Length && (text[at] == ' ' || (text[at] == '-' && whole > 0));
        if (!joined) return whole;
        int back = at;
        at++;
        string above = PlainDigits();
        if (above.Length == 0 || at + 1 >= text.Length || text[at] != '/' || !char.IsAsciiDigit(text[at + 1]))
        {
            at = back;
            return whole;
        }

        at++;
        return whole + Over(double.Parse(above, NumberStyles.None, CultureInfo.InvariantCulture));
    }

    private double Over(double above)
    {
        double below = double.Parse(PlainDigits(), NumberStyles.None, CultureInfo.InvariantCulture);
        if (below != 0) return above / below;
        Fail(QuantityTroubleKind.DividedByZero);
        return 0;
    }

    private string Exponent()
    {
        if (at >= text.Length || text[at] != 'e') return "";
        int digits = at + 1;
        if (digits < text.Length && text[digits] is '-' or '+') digits++;
        if (digits >= text.Length || !char.IsAsciiDigit(text[digits])) return "";
        string sign = text[at..digits];
        at = digits;
        return sign + PlainDigits();
    }

    private string Digits(out bool grouped)
    {
        grouped = false;
        string digits = PlainDigits();
        if (at >= text.Length || text[at] != ',' || digits.Length == 0) return digits;
        grouped = true;
        if (digits.Length > 3) Fail(QuantityTroubleKind.Comma);
        while (at < text.Length && text[at] == ',' && trouble is null)
        {
            at++;
            string group = PlainDigits();
            if (group.Length != 3) Fail(QuantityTroubleKind.Comma);
            digits += group;
        }

        return digits;
    }

    private string PlainDigits()
    {
        int start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return text[start..at];
    }

    private readonly bool StartsNumber(int place) =>
        char.IsAsciiDigit(text[place]) || (text[place] == '.' && place + 1 < text.Length && char.IsAsciiDigit(text[place + 1]));

    private readonly bool StandsHere(string word) => string.CompareOrdinal(text, at, word, 0, word.Length) == 0;

    private void SkipSpace()
    {
        while (at < text.Length && text[at] == ' ') at++;
    }

    private ScannedQuantity Fail(QuantityTroubleKind kind, string word = "")
    {
        trouble ??= new(kind, due, tried, Word: word);
        return default;
    }

    // Everyday spellings become one: lower case, plain digits for powers, "-" for every dash, "/" for "per".
    private static string Plain(string tried)
    {
        var plain = new StringBuilder(tried.Length + 8);
        foreach (char c in tried)
        {
            if (char.IsWhiteSpace(c)) plain.Append(' ');
            else plain.Append(Plain(c));
        }

        plain.Replace(" per ", "/").Replace("sq. ", "sq ").Replace("cu. ", "cu ").Replace("fl. ", "fl ");
        string text = plain.ToString();
        while (text.Contains("  ", StringComparison.Ordinal)) text = text.Replace("  ", " ", StringComparison.Ordinal);
        text = text.Replace(" / ", "/", StringComparison.Ordinal).Trim();
        bool abbreviated = text.Length > 1 && text[^1] == '.' && char.IsLetter(text[^2]);
        return abbreviated ? text[..^1] : text;
    }

    private static string Plain(char c) => c switch
    {
        'µ' or 'μ' or 'Μ' => "u",
        '²' => "2",
        '³' => "3",
        '^' => "",
        '−' or '–' or '—' or '‐' or '‑' => "-",
        '…' => "..",
        '′' or '’' or '‘' => "'",
        '″' or '”' or '“' => "\"",
        'º' or '˚' => "°",
        '℉' => "°f",
        '℃' => "°c",
        '⁄' or '∕' => "/",
        '％' => "%",
        '½' => " 1/2",
        '⅓' => " 1/3",
        '⅔' => " 2/3",
        '¼' => " 1/4",
        '¾' => " 3/4",
        '⅛' => " 1/8",
        '⅜' => " 3/8",
        '⅝' => " 5/8",
        '⅞' => " 7/8",
        _ => char.ToLowerInvariant(c).ToString(),
    };
}
