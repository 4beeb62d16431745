using CoatPlan.Problems;

namespace CoatPlan.Jobs.Yaml;

/// <summary>Turns offsets of a text into lines and columns, as an editor counts them: lines end at LF, CR LF or CR.</summary>
internal sealed class LineStarts
{
    private readonly ImmutableArray<int> starts;

    /// <param name="text">The text.</param>
    public LineStarts(string text)
    {
        var found = ImmutableArray.CreateBuilder<int>();
        found.Add(0);
        for (int i = 0; i < text.Length; i++)
        {
            bool ends = text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'));
            if (ends) found.Add(i + 1);
        }

        starts = found.ToImmutable();
    }

    /// <summary>The place of an offset.</summary>
    public Mark MarkOf(int offset)
    {
        int line = starts.BinarySearch(offset);
        if (line < 0) line = ~line - 1;
        return new(line + 1, offset - starts[line] + 1);
    }
}
