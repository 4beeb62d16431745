using CoatPlan.App.Wording;
using CoatPlan.Sheets.Pdf;

namespace CoatPlan.App;

/// <summary>What was written of a plan's sheets.</summary>
/// <param name="Paths">The files.</param>
/// <param name="Substitutes">What the PDFs print where their typefaces lack the letters.</param>
internal sealed record WrittenSheets(ImmutableArray<string> Paths, ImmutableArray<Substitute> Substitutes)
{
    private const int MostNamed = 8;

    /// <summary>What the person must know of the PDFs, a line each; empty where they hold every letter.</summary>
    public IEnumerable<string> Warnings()
    {
        if (Substitutes.IsEmpty)
            yield break;

        yield return $"The typefaces of the PDFs lack the letters of {Written.Count(Substitutes.Length, "word", "words")}; the texts and sheets.html have them. On paper stands:";
        foreach (var substitute in Substitutes.Take(MostNamed))
            yield return $"  {substitute.Printed} for {substitute.Words}";
        if (Substitutes.Length > MostNamed)
            yield return $"  and so on for {Written.Count(Substitutes.Length - MostNamed, "other", "others")}";
    }
}
