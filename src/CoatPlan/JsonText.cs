using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using NodaTime.Text;

namespace CoatPlan;

/// <summary>JSON as scripts outside the project read it: indented, the same bytes on every machine, numbers rounded well below what can be known.</summary>
internal static class JsonText
{
    private static readonly LocalDateTimePattern TimePattern = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss");

    // Delete and the second set of control characters; line and paragraph separators; the embeddings, overrides and isolates of UAX #9, table 1.
    private static readonly SearchValues<char> Steering = SearchValues.Create(
        [.. Enumerable.Range(0x7F, 0x21).Concat(Enumerable.Range(0x2028, 7)).Concat(Enumerable.Range(0x2066, 4)).Select(code => (char)code)]);

    private static readonly JsonWriterOptions Indented =
        new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One object, with an end of line behind it.</summary>
    public static string Of(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Indented))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Escaped(Encoding.UTF8.GetString(bytes.ToArray())) + "\n";
    }

    /// <summary>The same JSON with what would steer a terminal or turn the direction of a line as escapes; it can stand in texts only.</summary>
    /// <param name="json">Valid JSON.</param>
    public static string Escaped(string json)
    {
        if (!json.AsSpan().ContainsAny(Steering))
            return json;

        var escaped = new StringBuilder(json.Length);
        foreach (var character in json)
        {
            if (Steering.Contains(character))
                escaped.Append(CultureInfo.InvariantCulture, $"\\u{(int)character:x4}");
            else
                escaped.Append(character);
        }

        return escaped.ToString();
    }

    /// <summary>A list of objects.</summary>
    public static void Each<T>(Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A list of texts.</summary>
    public static void Texts(Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    /// <summary>A local time; null where there is none.</summary>
    public static void Time(Utf8JsonWriter json, string name, LocalDateTime? time)
    {
        if (time is { } known)
            json.WriteString(name, TimePattern.Format(known));
        else
            json.WriteNull(name);
    }

    /// <summary>A number with so many decimals at most; null where there is none.</summary>
    public static void Number(Utf8JsonWriter json, string name, double? number, int decimals)
    {
        if (number is { } known && double.IsFinite(known))
            json.WriteNumber(name, Math.Round(known, decimals, MidpointRounding.AwayFromZero) + 0.0);
        else
            json.WriteNull(name);
    }

    /// <summary>A yes or no; null where nobody asked.</summary>
    public static void Flag(Utf8JsonWriter json, string name, bool? flag)
    {
        if (flag is { } known)
            json.WriteBoolean(name, known);
        else
            json.WriteNull(name);
    }

    /// <summary>An amount of money; null where it is not known.</summary>
    public static void Money(Utf8JsonWriter json, string name, decimal? money)
    {
        if (money is { } known)
            json.WriteNumber(name, known);
        else
            json.WriteNull(name);
    }
}
