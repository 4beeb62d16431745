namespace CoatPlan.Tests.Properties;

/// <summary>Makes the text of a job that fails as short as it can be and still fail.</summary>
internal static class Minimal
{
    private const int MostTries = 400;

    /// <param name="text">A text that fails.</param>
    /// <param name="fails">Whether a text fails in the same way; a text that is no job does not.</param>
    public static string Of(string text, Func<string, bool> fails)
    {
        var lines = text.Split('\n').Where(line => line.Length > 0).ToList();
        int tries = 0;
        for (int size = Math.Max(1, lines.Count / 4); size >= 1; size /= 2)
        {
            for (int from = lines.Count - size; from >= 0; from -= size)
            {
                var shorter = lines.Where((_, i) => i < from || i >= from + size).ToList();
                if (tries++ < MostTries && fails(string.Join('\n', shorter) + "\n"))
                {
                    lines = shorter;
                }
            }
        }

        return string.Join('\n', lines) + "\n";
    }
}
