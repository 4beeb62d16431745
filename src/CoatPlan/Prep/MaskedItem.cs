using UnitsNet;

namespace CoatPlan.Prep;

/// <summary>One thing that is covered on one surface, on all its pieces.</summary>
/// <param name="Surface">Id of the surface it is on or beside.</param>
/// <param name="What">What is covered, in the words of the job, or of the rule where the job lists nothing.</param>
/// <param name="Kind">The contract's word for its kind.</param>
/// <param name="How">What it is covered with.</param>
/// <param name="Edge">Length of taped edge, zero where it is plugged or bagged.</param>
/// <param name="Area">Area under paper or film, zero where tape alone does it.</param>
/// <param name="Plugs">Number of plugs, caps or bags.</param>
public sealed record MaskedItem(string Surface, string What, string Kind, string How, Length Edge, Area Area, int Plugs);
