using System.Text;

namespace CoatPlan.Tests.Outside;

/// <summary>Published tables kept beside the tests: comma-separated, one header row, source and status in the last columns.</summary>
internal static class CheckValues
{
    public static ImmutableArray<CheckRow> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Data", "check-values", file));
        var names = Fields(lines[0]);
        return
        [
            .. lines.Skip(1).Where(line => line.Length > 0)
                .Select(line => new CheckRow(names.Zip(Fields(line)).ToImmutableDictionary(field => field.First, field => field.Second))),
        ];
    }

    private static ImmutableArray<string> Fields(string line)
    {
        var fields = ImmutableArray.CreateBuilder<string>();
        var field = new StringBuilder();
        var quoted = false;
        foreach (var sign in line)
        {
            if (sign == '"')
            {
                quoted = !quoted;
            }
            else if (sign == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(sign);
            }
        }

        fields.Add(field.ToString());
        return fields.ToImmutable();
    }
}
