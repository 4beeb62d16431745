using UnitsNet;

namespace CoatPlan.Prep;

/// <summary>How things are masked, and what it takes where the job does not say.</summary>
/// <param name="EdgeNotSaid">Edge of a listed thing with neither edge nor area.</param>
/// <param name="Apron">Width of film around a surface sprayed in place.</param>
/// <param name="How">Kind of thing to what covers it.</param>
/// <param name="Source">Where the two lengths come from.</param>
/// <param name="Status">How well that is vouched for.</param>
internal sealed record PrepMasking(
    Length EdgeNotSaid, Length Apron, ImmutableSortedDictionary<string, string> How, string Source, string Status)
{
    /// <summary>Nothing said.</summary>
    public static PrepMasking None { get; } =
        new(Length.Zero, Length.Zero, ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal), "", "");
}
