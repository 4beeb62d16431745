namespace CoatPlan.Scheduling.Exact;

/// <summary>How many minutes, of either sign, one start must at least follow another by constants alone.</summary>
internal sealed class Distances
{
    private const int None = int.MinValue / 4;

    private readonly int[][] minutes;
    private readonly int[] work;

    private Distances(int[][] minutes, int[] work)
    {
        this.minutes = minutes;
        this.work = work;
    }

    /// <summary>The longest paths between all pairs. Source: R. W. Floyd, "Algorithm 97: shortest path", Comm. ACM 5 (1962).</summary>
    public static Distances Of(Frame frame)
    {
        var longest = new int[frame.Count][];
        for (var i = 0; i < frame.Count; i++)
        {
            longest[i] = new int[frame.Count];
            Array.Fill(longest[i], None);
            longest[i][i] = 0;
        }

        foreach (var arc in ConstantArc.Of(frame))
        {
            longest[arc.From][arc.To] = Math.Max(longest[arc.From][arc.To], arc.Minutes);
        }

        for (var k = 0; k < frame.Count; k++)
        {
            for (var i = 0; i < frame.Count; i++)
            {
                if (longest[i][k] == None)
                {
                    continue;
                }

                for (var j = 0; j < frame.Count; j++)
                {
                    if (longest[k][j] != None)
                    {
                        longest[i][j] = Math.Max(longest[i][j], longest[i][k] + longest[k][j]);
                    }
                }
            }
        }

        return new Distances(longest, frame.Work);
    }

    /// <summary>Whether, of two that cannot run together, the second cannot come first.</summary>
    public bool MustPrecede(int first, int second) => minutes[first][second] != None && minutes[first][second] + work[second] > 0;
}
