using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>A row of warnings.yaml: which warnings a verdict gives.</summary>
/// <param name="Id">Its name in the file.</param>
/// <param name="On">material, spots, finish or layer.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Reasons">Keys of reasons it is narrowed to; empty: any.</param>
/// <param name="Above">Classes above it is narrowed to; empty: any.</param>
/// <param name="Rows">Ids of the warnings.</param>
internal sealed record JudgementRow(
    string Id, string On, Verdict Verdict, ImmutableArray<string> Reasons, ImmutableArray<string> Above, ImmutableArray<string> Rows)
{
    /// <summary>Whether the row is about a pairing.</summary>
    public bool Fits(Pairing pairing) =>
        pairing.On == On
        && pairing.Judgement.Verdict == Verdict
        && (Reasons.IsEmpty || Reasons.Contains(pairing.Judgement.Key, StringComparer.Ordinal))
        && (Above.IsEmpty || (pairing.Above.Preset is { } preset && Above.Contains(preset, StringComparer.Ordinal)));
}
