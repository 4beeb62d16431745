using System.Text;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>The text of a job file, taken from the bytes of a file that may hold anything.</summary>
/// <remarks>Whoever reads the file reads no more than <see cref="MostBytes"/> + 1 bytes: one more than allowed is enough to refuse it.</remarks>
public sealed record JobText
{
    /// <summary>Most bytes of a job file: 2 MiB.</summary>
    public const int MostBytes = YamlLimits.Bytes;

    private JobText(string text, ImmutableArray<Problem> problems, bool hasByteOrderMark)
    {
        Text = text;
        Problems = problems;
        HasByteOrderMark = hasByteOrderMark;
    }

    /// <summary>The text without its byte order mark; empty where there are problems.</summary>
    public string Text { get; }

    /// <summary>Why the bytes are no text; empty: they are.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>Whether a byte order mark stood before it; saving puts it back.</summary>
    public bool HasByteOrderMark { get; }

    /// <summary>Takes the text out of the bytes of a file.</summary>
    /// <param name="bytes">The bytes, all of them or the first <see cref="MostBytes"/> + 1.</param>
    /// <param name="fileName">The name of the file, as problems shall call it.</param>
    public static JobText FromBytes(ReadOnlySpan<byte> bytes, string fileName)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        var problems = new ProblemList(fileName);
        bool mark = bytes.StartsWith(Encoding.UTF8.Preamble);
        string text = "";
        if (bytes.Length > MostBytes) problems.Add(default, Sentences.TooLarge(MostBytes));
        else if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])) problems.Add(default, Sentences.Utf16());
        else text = Decode(mark ? bytes[Encoding.UTF8.Preamble.Length..] : bytes, problems);
        return new(problems.Count == 0 ? text : "", problems.InOrder(), mark);
    }

    /// <summary>The bytes to save for a text that was read from this file.</summary>
    /// <param name="text">The text to save.</param>
    public ImmutableArray<byte> ToBytes(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        byte[] bytes = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text);
        return HasByteOrderMark ? [.. Encoding.UTF8.Preamble, .. bytes] : [.. bytes];
    }

    private static string Decode(ReadOnlySpan<byte> bytes, ProblemList problems)
    {
        int bad = System.Text.Unicode.Utf8.IsValid(bytes) ? -1 : FirstBad(bytes);
        int nul = bytes.IndexOf((byte)0);
        if (nul >= 0 && (bad < 0 || nul < bad))
        {
            problems.Add(MarkAfter(bytes[..nul]), Sentences.ControlCharacter(0));
            return "";
        }

        if (bad < 0) return Encoding.UTF8.GetString(bytes);
        problems.Add(MarkAfter(bytes[..bad]), Sentences.NotUtf8());
        return "";
    }

    private static int FirstBad(ReadOnlySpan<byte> bytes)
    {
        int at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out int length) == System.Buffers.OperationStatus.Done) at += length;
        return at;
    }

    private static Mark MarkAfter(ReadOnlySpan<byte> before)
    {
        string text = Encoding.UTF8.GetString(before);
        return new LineStarts(text).MarkOf(text.Length);
    }
}
