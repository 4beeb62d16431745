using System.Text;

namespace CoatPlan.Tests.Sheets;

/// <summary>A strict reader after RFC 4180 that shares nothing with what writes the lists.</summary>
internal static class ReadCsv
{
    /// <summary>The records; fails the test where a quote stands where none may, or a line does not end as the standard asks.</summary>
    /// <param name="text">The list.</param>
    public static List<List<string>> Of(string text)
    {
        var records = new List<List<string>>();
        var record = new List<string>();
        var at = 0;
        while (at < text.Length)
        {
            record.Add(text[at] == '"' ? Quoted(text, ref at) : Bare(text, ref at));
            if (text[at] == ',')
            {
                at++;
                continue;
            }

            text.Substring(at, 2).ShouldBe("\r\n");
            at += 2;
            records.Add(record);
            record = [];
        }

        record.ShouldBeEmpty();
        return records;
    }

    private static string Quoted(string text, ref int at)
    {
        var cell = new StringBuilder();
        for (at++; text[at] != '"' || text[at + 1] == '"'; at++)
        {
            if (text[at] == '"')
                at++;
            cell.Append(text[at]);
        }

        at++;
        return cell.ToString();
    }

    private static string Bare(string text, ref int at)
    {
        var from = at;
        while (text[at] is not (',' or '\r' or '\n'))
            text[at++].ShouldNotBe('"');
        return text[from..at];
    }
}
