using System.Globalization;
using CoatPlan.Quantities;

namespace CoatPlan.Problems;

/// <summary>Every sentence that says what is wrong in a text of the user.</summary>
/// <remarks>A sentence reads "what is wrong, expected what was expected; did you mean …?".</remarks>
internal static class Sentences
{
    // The file as a whole

    public static Problem EmptyFile(string expected) => New("empty-file", "nothing is in the file", expected);

    public static Problem TooLarge(int mostBytes) =>
        New("too-large", "the file is too large", $"at most {(mostBytes / 1024).ToString(CultureInfo.InvariantCulture)} KiB of text");

    public static Problem NoForecast(string path, string whyNot) =>
        New("no-forecast", $"the forecast `{path}` cannot be read: {whyNot}", "a file beside the job file or below its folder", path);

    public static Problem NotUtf8() => New("not-utf8", "here is a byte that is not UTF-8", "text saved as UTF-8");

    public static Problem Utf16() => New("not-utf8", "the file is UTF-16", "text saved as UTF-8");

    public static Problem ControlCharacter(int code) =>
        New("binary", $"here is the control character U+{code.ToString("X4", CultureInfo.InvariantCulture)}, as in a binary file", "text");

    public static Problem TooManyProblems(int shown) =>
        New("too-many", $"more than {shown.ToString(CultureInfo.InvariantCulture)} problems; the rest is not shown");

    // The shape of the text

    public static Problem Tab() => New("tab", "a tab stands where the line is indented", "spaces");

    public static Problem UnclosedQuote() => New("not-yaml", "a quote is opened here and never closed", "a closing quote");

    public static Problem UnclosedBracket() =>
        New("not-yaml", "this bracket is not closed, or a comma or a colon is missing in it", "`,`, `:`, `]` or `}`");

    public static Problem TwoKeysOnOneLine() =>
        New("not-yaml", "a second `key:` stands in one line, or the line is indented further than the one before",
            "one `key: value` a line, keys of one map indented alike, text with a colon in quotes");

    public static Problem BadCharacter() =>
        New("not-yaml", "a value cannot begin with this character", "the value in quotes");

    public static Problem NotYaml() =>
        New("not-yaml", "the text cannot be read as YAML from here",
            "`key: value` lines, keys of one map indented alike with spaces, quotes and brackets closed");

    public static Problem SeveralDocuments() => New("several-documents", "a second document begins here", "one job in a file");

    public static Problem TooDeep(int most) =>
        New("too-deep", "maps and lists are nested too deeply here", $"at most {most.ToString(CultureInfo.InvariantCulture)} levels");

    public static Problem TooMany(int most) =>
        New("too-many-values", "the file holds too many values, aliases counted out",
            $"at most {most.ToString("N0", CultureInfo.InvariantCulture)}");

    public static Problem Cycle(string anchor) => New("cycle", $"`*{anchor}` stands inside what it repeats", "a value that does not hold itself", anchor);

    public static Problem UnknownAlias(string anchor, IEnumerable<string> known) =>
        New("unknown-alias", $"nothing above is marked `&{anchor}`", "the name of an anchor", anchor, Quoted(Nearest.To(anchor, known), "*"));

    public static Problem Tag(string tag) => New("tag", $"the tag `{tag}` is not known", "a value without a tag", tag);

    public static Problem KeyIsNotText() => New("key-not-text", "a map or a list stands where a key is due", "a key in one word");

    // Keys and kinds of values

    public static Problem UnknownKey(string key, string where, IEnumerable<string> known)
    {
        string[] keys = [.. known];
        return UnknownKey(key, where, keys, Nearest.To(key.Replace('_', '-').Replace(' ', '-'), keys));
    }

    public static Problem UnknownKey(string key, string where, IEnumerable<string> known, string? meant)
    {
        const int MostListed = 12;
        string[] keys = [.. known];
        string expected = keys.Length > MostListed ? "a key of " + where : "one of " + Listed(keys);
        return New("unknown-key", $"unknown key `{key}` in {where}", expected, key, Quoted(meant));
    }

    public static Problem KeyOutside(string key, string beside) =>
        New("unknown-key", $"`{key}` stands beside `{beside}`", $"it inside the braces of `{beside}`: `{{{beside}: {{…, {key}: …}}}}`", key);

    public static Problem MissingKey(string key, string where, string example) =>
        New("missing-key", $"`{key}` is missing in {where}", example.Length == 0 ? $"`{key}:`" : $"`{key}: {example}`");

    public static Problem RepeatedKey(string key, Mark first) =>
        New("repeated-key", $"the key `{key}` stands here a second time", $"it once (first in line {Number(first.Line)})", key);

    public static Problem NoValue(string key, string expected) => New("no-value", $"`{key}` has no value", expected);

    public static Problem WrongKind(string what, string found, string expected) => New("wrong-type", $"{what} is {found}", expected);

    public static Problem NotABoolean(string what, string tried, string? mend) =>
        New("wrong-type", $"{what} is `{tried}`", "`true` or `false`", tried, Quoted(mend));

    public static Problem NotWhole(string what, string tried, Bounds bounds) =>
        New("wrong-type", $"{what} is `{tried}`", "a whole number, " + bounds, tried);

    public static Problem OutOfRange(string what, string tried, string bounds) =>
        New("out-of-range", $"{what} is `{tried}`", bounds, tried);

    public static Problem NotATime(string what, string tried) =>
        New("not-a-time", $"{what} is `{tried}`", "a date and time such as `2027-05-14 16:00`", tried);

    public static Problem NoSuchDate(string what, string tried) =>
        New("not-a-time", $"{what} is `{tried}`, a date or time that does not exist", "a date and time such as `2027-05-14 16:00`", tried);

    // Words and names

    public static Problem UnknownWord(string what, string tried, IEnumerable<string> known, string? mend)
    {
        string[] words = [.. known];
        return New("unknown-word", $"unknown {what} `{tried}`", "one of " + string.Join(", ", words), tried,
            Quoted(mend ?? Nearest.To(tried, words)));
    }

    public static Problem UnknownName(string what, string tried, IEnumerable<string> known)
    {
        string[] names = [.. known];
        string expected = names.Length == 0 ? $"a {what} that is defined here, and there is none" : "one of " + Listed(names);
        return New("unknown-name", $"no {what} `{tried}` is defined", expected, tried, Quoted(Nearest.To(tried, names)));
    }

    public static Problem UnknownSolvent(string tried, IEnumerable<string> known) =>
        New("unknown-name", $"no solvent `{tried}` is known, so its vapour cannot be counted",
            "a name or CAS number of the presets, or a row for it under `solvents:` in a preset file with molar mass, density, boiling and its limits",
            tried, Quoted(Nearest.To(tried, known)));

    public static Problem RepeatedName(string what, string tried, Mark first) =>
        New("repeated-name", $"the {what} `{tried}` is taken", $"one of its own (first in line {Number(first.Line)})", tried);

    // Things that must agree

    public static Problem OneOf(string where, IEnumerable<string> keys, IEnumerable<string> found)
    {
        string[] there = [.. found];
        string message = there.Length == 0 ? $"{where} says none of {Listed(keys)}" : $"{where} says {Listed(there, "and")} at once";
        return New("one-of", message, "exactly one of them");
    }

    public static Problem Needed(string where, string key, string why) =>
        New("missing-key", $"`{key}` is missing in {where}", $"`{key}:`, {why}");

    public static Problem NotBeside(string key, string other, string where) =>
        New("one-of", $"{where} says `{key}` beside `{other}`", "one without the other");

    public static Problem Order(string what, string tried, string expected) => New("order", $"{what} is `{tried}`", expected, tried);

    public static Problem EmptyList(string what, string expected) => New("empty-list", $"{what} is empty", expected);

    public static Problem SharesOverWhole(string sum) =>
        New("out-of-range", $"the least shares of the solvents sum up to {sum}", "at most 100 %");

    public static Problem HoursTaken(string key, Mark first) =>
        New("repeated-hours", $"hours for a day of `{key}` were given before",
            $"each day once among entries of one kind (first in line {Number(first.Line)}; a date beats a day, a day beats a range)", key);

    public static Problem TooManyHours(int most) =>
        New("too-many-values", "`hours` has too many entries", $"at most {most.ToString("N0", CultureInfo.InvariantCulture)}");

    public static Problem NotHours(string tried) => New("not-hours", $"the hours are `{tried}`", "a span such as `16:00-21:00`, or `none`", tried);

    public static Problem NotADay(string tried, string? mend) =>
        New("not-a-day", $"`{tried}` is no date, day or range of days", "`2027-05-14`, `Fri` or `Sat-Sun`", tried, Quoted(mend));

    public static Problem SpansOverlap(string tried) => New("order", $"the span `{tried}` begins before the one above it ends", "spans apart, in any order", tried);

    public static Problem EmptySpan(string tried) => New("order", $"the span `{tried}` ends when it begins", "an end that differs from the start", tried);

    public static Problem NoHours() => New("no-hours", "no entry of the hours holds any time", "one span of work or more");

    public static Problem NotAWindow(string what, string tried, string? mend = null) =>
        New("not-a-window", $"{what} is `{tried}`", "a window such as `10 min-1 h`, `after 24 h` or `within 30 min`", tried, Quoted(mend));

    public static Problem NothingLeft(string what) =>
        New("nothing-left", $"what is taken away from {what} is as large as the shape or larger", "some of it left");

    public static Problem NotEditable(string path) =>
        New("not-editable", $"`{path}` is not there, or is written in a way that cannot be edited here", "the file edited by hand", path);

    public static Problem SharedValue(string path) =>
        New("not-editable", $"`{path}` belongs to a value that is repeated elsewhere by `&` and `*`", "the file edited by hand", path);

    // Quantities

    /// <summary>The sentence for a text that is not the quantity that was due.</summary>
    public static Problem Quantity(string what, QuantityTrouble trouble)
    {
        string expected = Due(trouble.Due);
        string tried = trouble.Tried;
        string found = $"{what} is `{tried}`";
        return trouble.Kind switch
        {
            QuantityTroubleKind.Empty => New("no-value", $"{what} has no value", expected),
            QuantityTroubleKind.NoUnit => New("no-unit", $"{found}, a bare number", expected, tried, WithUnit(tried, trouble.Due)),
            QuantityTroubleKind.UnknownUnit => New("unknown-unit", $"{found}, and `{trouble.Word}` is no known unit", expected, tried,
                Quoted(Nearest.To(trouble.Word, UnitTable.SpellingsOf(trouble.Due)))),
            QuantityTroubleKind.WrongDimension => New("wrong-unit", $"{found}, {Name(trouble.Found ?? Dimension.None)}", expected, tried, OtherUnit(trouble)),
            QuantityTroubleKind.BareDegree => New("wrong-unit", $"{found}, which says neither °F nor °C", expected, tried),
            QuantityTroubleKind.Comma => New("comma", $"{found}; a comma groups thousands", "a decimal point, as in `1.5`", tried),
            QuantityTroubleKind.DividedByZero => New("not-a-number", $"{found}, over zero", expected, tried),
            QuantityTroubleKind.TooLarge => New("out-of-range", $"{found}, more than can be counted with", expected, tried),
            QuantityTroubleKind.Range => New("range", $"{found}, a range", "one figure, " + expected, tried),
            QuantityTroubleKind.RangeReversed => New("order", $"{found}, from more to less", "the lesser figure first", tried),
            QuantityTroubleKind.Trailing => New("not-a-number", $"{found}, more than one figure", expected, tried),
            _ => New("not-a-number", found, expected, tried),
        };
    }

    /// <summary>What is due, with an example: "a length such as `6 in`".</summary>
    public static string Due(Dimension dimension) => dimension == Dimension.None
        ? "a number without a unit"
        : $"{Name(dimension)} such as `{Example(dimension)}`";

    /// <summary>An example of a quantity, in the spelling of the reference.</summary>
    public static string Example(Dimension dimension) => dimension switch
    {
        Dimension.Length => "6 in",
        Dimension.Area => "8 ft2",
        Dimension.Volume => "400 mL",
        Dimension.Mass => "12 oz",
        Dimension.Temperature => "70 °F",
        Dimension.Duration => "30 min",
        Dimension.Ratio => "10 %",
        Dimension.Flow => "800 ft3/min",
        Dimension.Pressure => "132 psi",
        Dimension.Density => "0.79 kg/L",
        Dimension.MoneyPerHour => "85 /h",
        Dimension.Angle => "90°",
        Dimension.Speed => "10 mph",
        _ => "2",
    };

    private static string Name(Dimension dimension) => dimension switch
    {
        Dimension.Length => "a length",
        Dimension.Area => "an area",
        Dimension.Volume => "a volume",
        Dimension.Mass => "a mass",
        Dimension.Temperature => "a temperature",
        Dimension.Duration => "a duration",
        Dimension.Ratio => "a share",
        Dimension.Flow => "an air flow",
        Dimension.Pressure => "a pressure",
        Dimension.Density => "a density",
        Dimension.MoneyPerHour => "money for an hour",
        Dimension.Angle => "an angle",
        Dimension.Speed => "a speed",
        _ => "a bare number",
    };

    private static string? WithUnit(string tried, Dimension due)
    {
        if (due is Dimension.None || tried.Length > 20) return null;
        if (due == Dimension.Ratio && QuantityText.Number(tried) is { Ok: true, Value: > 0 and < 1 } share)
        {
            return $"`{(share.Value * 100).ToString("0.##", CultureInfo.InvariantCulture)} %`";
        }

        string example = Example(due);
        return $"`{tried}{(due == Dimension.Angle ? "°" : example[example.IndexOf(' ', StringComparison.Ordinal)..])}`";
    }

    private static string? OtherUnit(QuantityTrouble trouble)
    {
        bool ounces = trouble is { Due: Dimension.Volume, Found: Dimension.Mass } && trouble.Tried.EndsWith("oz", StringComparison.OrdinalIgnoreCase);
        return ounces ? $"`{trouble.Tried[..^2].TrimEnd()} fl oz`" : null;
    }

    private static string Listed(IEnumerable<string> names, string last = "or")
    {
        const int MostNames = 24;
        string[] all = [.. names.Take(MostNames + 1).Select(name => $"`{name}`")];
        if (all.Length > MostNames) return string.Join(", ", all[..MostNames]) + ", …";
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} {last} {all[^1]}";
    }

    private static string? Quoted(string? word, string before = "") => word is null ? null : $"`{before}{word}`";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static Problem New(string code, string message, string expected = "", string tried = "", string? mend = null) =>
        new() { Code = code, Message = message, Expected = expected, Tried = tried, Mend = mend };
}
