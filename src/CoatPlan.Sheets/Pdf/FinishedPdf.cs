using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace CoatPlan.Sheets.Pdf;

/// <summary>
/// The last hand at a document that the PDF library wrote uncompressed: streams are compressed to their end, and nothing in it comes from a clock or by chance.
/// </summary>
/// <remarks>
/// The library leaves its compressed streams without their last block, which strict readers warn of, and names each document anew, so that the same plan would
/// give other bytes each time. Here a document's name follows from what is in it. Source: ISO 32000-1, 7.3.8, 7.5 and 14.4; RFC 1950.
/// </remarks>
internal static partial class FinishedPdf
{
    private const int IdBytes = 16;

    private const int TagLetters = 6;

    private const int Letters = 26;

    private const string StreamBegin = "\nstream\n";

    private const string StreamEnd = "\nendstream";

    // Bytes as characters one to one, so that what is not text survives.
    private static readonly Encoding Bytes = Encoding.Latin1;

    /// <summary>The finished document.</summary>
    /// <param name="written">What the library wrote, with a cross-reference table and without compression.</param>
    public static byte[] Of(byte[] written)
    {
        var text = Bytes.GetString(written);
        var table = Table().Match(text, text.LastIndexOf("\nxref\n", StringComparison.Ordinal));
        var offsets = table.Groups["at"].Captures.Select(capture => int.Parse(capture.Value, CultureInfo.InvariantCulture)).ToArray();
        var kinds = table.Groups["kind"].Captures.Select(capture => capture.Value).ToArray();
        var used = offsets.Where((_, number) => kinds[number] == "n").Order().Append(table.Index + 1).ToArray();

        var made = new StringBuilder(text.Length).Append(text, 0, used[0]);
        var moved = new Dictionary<int, int>();
        var subsets = new List<string>();
        for (var i = 0; i + 1 < used.Length; i++)
        {
            moved[used[i]] = made.Length;
            made.Append(Object(text[used[i]..used[i + 1]], subsets));
        }

        var id = Convert.ToHexString(SHA256.HashData(Bytes.GetBytes(made.ToString())).AsSpan(0, IdBytes));
        var start = made.Length;
        made.Append(CultureInfo.InvariantCulture, $"xref\n0 {offsets.Length}\n");
        for (var number = 0; number < offsets.Length; number++)
            made.Append(kinds[number] == "n" ? string.Create(CultureInfo.InvariantCulture, $"{moved[offsets[number]]:0000000000} 00000 n \n") : "0000000000 65535 f \n");
        var trailer = Id().Replace(text[(table.Index + table.Length)..text.LastIndexOf(">>", StringComparison.Ordinal)], $"/ID[<{id}><{id}>]");
        made.Append(trailer).Append(CultureInfo.InvariantCulture, $">>\nstartxref\n{start}\n%%EOF\n");
        return Bytes.GetBytes(made.ToString());
    }

    private static string Object(string text, List<string> subsets)
    {
        var begin = text.IndexOf(StreamBegin, StringComparison.Ordinal);
        var head = Subset().Replace(begin < 0 ? text : text[..begin], tag => Tag(tag.Value, subsets));
        if (begin < 0)
            return head;

        var content = text[(begin + StreamBegin.Length)..text.LastIndexOf(StreamEnd, StringComparison.Ordinal)];
        // Describing the document a second time, it is left readable and only loses what differs from one writing to the next.
        if (head.Contains("/Metadata", StringComparison.Ordinal))
            return WithLength(head, Chance().Replace(content, "00000000-0000-0000-0000-000000000000"), "");

        return WithLength(head, Bytes.GetString(Compressed(Bytes.GetBytes(content))), "/Filter/FlateDecode");
    }

    // Six letters that set two subsets of one typeface apart; which, is free.
    private static string Tag(string tag, List<string> subsets)
    {
        if (!subsets.Contains(tag))
            subsets.Add(tag);
        var letters = new char[TagLetters];
        for (var (i, rest) = (TagLetters - 1, subsets.IndexOf(tag)); i >= 0; i--, rest /= Letters)
            letters[i] = (char)('A' + (rest % Letters));
        return $"/{new string(letters)}+";
    }

    private static string WithLength(string head, string content, string filter)
    {
        var length = string.Create(CultureInfo.InvariantCulture, $"/Length {content.Length}{filter}");
        return $"{Length().Replace(head, length, 1)}{StreamBegin}{content}{StreamEnd}\nendobj\n";
    }

    private static byte[] Compressed(byte[] content)
    {
        using var bytes = new MemoryStream();
        using (var zlib = new ZLibStream(bytes, CompressionLevel.Optimal, leaveOpen: true))
            zlib.Write(content);
        return bytes.ToArray();
    }

    [GeneratedRegex(@"\nxref\n0 \d+\n(?:(?<at>\d{10}) \d{5} (?<kind>[nf]) \n)+")]
    private static partial Regex Table();

    [GeneratedRegex(@"/ID\[<[0-9A-Fa-f]*><[0-9A-Fa-f]*>\]")]
    private static partial Regex Id();

    [GeneratedRegex(@"(?<=/BaseFont|/FontName)/[A-Z]{6}\+")]
    private static partial Regex Subset();

    [GeneratedRegex(@"/Length \d+")]
    private static partial Regex Length();

    [GeneratedRegex("(?<=ID>uuid:)[0-9a-fA-F]{8}(?:-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}")]
    private static partial Regex Chance();
}
