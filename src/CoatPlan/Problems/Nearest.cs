namespace CoatPlan.Problems;

/// <summary>Guesses which of the known words was meant.</summary>
public static class Nearest
{
    private const int LongestWord = 64;
    private const int MostKnown = 1000;

    /// <summary>The known word nearest to a word by edit distance, when it is near enough to be meant.</summary>
    /// <remarks>Near enough is one edit in three letters; of equals the first known one; no more than the first thousand are looked at. Swapping two neighbours is one edit.
    /// Where none is near, the first that begins with the word counts as meant.</remarks>
    /// <param name="word">What was written.</param>
    /// <param name="known">What could have been written.</param>
    /// <returns>A known word in its own spelling; null: none is near.</returns>
    public static string? To(string word, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(known);
        if (word.Length is 0 or > LongestWord) return null;
        string own = word.ToLowerInvariant();
        string? best = null;
        int bestDistance = int.MaxValue;
        foreach (string candidate in known.Take(MostKnown))
        {
            if (candidate.Length > LongestWord) continue;
            int distance = Distance(own, candidate.ToLowerInvariant());
            int most = Math.Max(own.Length, candidate.Length) / 3;
            if (distance > Math.Max(1, most) || distance >= bestDistance || distance >= own.Length) continue;
            best = candidate;
            bestDistance = distance;
        }

        const int LeastBeginning = 3;
        return best ?? (own.Length < LeastBeginning
            ? null
            : known.Take(MostKnown).FirstOrDefault(candidate => candidate.StartsWith(own, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>Edits from one word to the other: letters put in, left out, changed, or neighbours swapped.</summary>
    /// <param name="a">One word.</param>
    /// <param name="b">The other word.</param>
    public static int Distance(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        int[,] edits = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++) edits[i, 0] = i;
        for (int j = 0; j <= b.Length; j++) edits[0, j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int changed = edits[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                edits[i, j] = Math.Min(changed, Math.Min(edits[i - 1, j], edits[i, j - 1]) + 1);
                bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                if (swapped) edits[i, j] = Math.Min(edits[i, j], edits[i - 2, j - 2] + 1);
            }
        }

        return edits[a.Length, b.Length];
    }
}
