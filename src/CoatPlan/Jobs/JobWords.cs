namespace CoatPlan.Jobs;

/// <summary>The closed words of the job file, and how words are compared.</summary>
public static class JobWords
{
    private static readonly (string Other, string Contract)[] Spellings =
    [
        ("aluminum", "aluminium"), ("color", "colour"), ("gray", "grey"), ("fiberglass", "fibreglass"), ("galvanized", "galvanised"),
        ("sensitizer", "sensitiser"),
    ];

    /// <summary>How well one coat hides.</summary>
    public static readonly ImmutableArray<string> Hiding = ["good", "fair", "poor"];

    /// <summary>How light a surface is, dark to light.</summary>
    public static readonly ImmutableArray<string> Lightness = ["black", "dark", "mid", "light", "white"];

    /// <summary>A word in the form in which words are compared: lower case, hyphens as spaces, one spelling.</summary>
    /// <param name="word">A word as a person wrote it.</param>
    public static string Fold(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        string[] parts = word.ToLowerInvariant().Replace('-', ' ').Replace('_', ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        string folded = string.Join(' ', parts);
        foreach (var (other, contract) in Spellings) folded = folded.Replace(other, contract, StringComparison.Ordinal);
        return folded;
    }

    /// <summary>The known word that was written, in its own spelling.</summary>
    /// <param name="word">A word as a person wrote it.</param>
    /// <param name="known">The known words.</param>
    /// <returns>A word of <paramref name="known"/>; null: it is none of them.</returns>
    public static string? Find(string word, ImmutableArray<string> known)
    {
        string folded = Fold(word);
        return known.FirstOrDefault(candidate => Fold(candidate) == folded);
    }

    /// <summary>The id of a surface from its name: lower case, every run of other than letters and digits a hyphen, trimmed.</summary>
    /// <param name="name">A name.</param>
    /// <returns>The id; <c>surface</c> where the name has neither letter nor digit.</returns>
    public static string IdOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var id = new System.Text.StringBuilder(name.Length);
        foreach (var rune in name.ToLowerInvariant().EnumerateRunes())
        {
            if (System.Text.Rune.IsLetterOrDigit(rune)) id.Append(rune.ToString());
            else if (id.Length > 0 && id[^1] != '-') id.Append('-');
        }

        string trimmed = id.ToString().TrimEnd('-');
        return trimmed.Length == 0 ? "surface" : trimmed;
    }

    /// <summary>The words of an enum in the contract's spelling: <c>SprayGun</c> is <c>spray gun</c>.</summary>
    /// <typeparam name="T">An enum of the job file.</typeparam>
    public static ImmutableArray<string> Of<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(Write)];

    /// <summary>The word of a value in the contract's spelling.</summary>
    /// <typeparam name="T">An enum of the job file.</typeparam>
    /// <param name="value">The value.</param>
    public static string Write<T>(T value)
        where T : struct, Enum => value switch
        {
            ApplicationMethod.SprayGun => "spray gun",
            DryingKind.TwoPart => "two-part",
#pragma warning disable CA1308 // The contract's words are lower case.
            _ => value.ToString().ToLowerInvariant(),
#pragma warning restore CA1308
        };
}
