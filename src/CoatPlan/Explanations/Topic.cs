namespace CoatPlan.Explanations;

/// <summary>A figure that can be asked for.</summary>
/// <param name="Path">Its place in the plan's JSON.</param>
/// <param name="Names">What people may call it, the plainest first; the path is a name too.</param>
/// <param name="Explain">Works its explanation out.</param>
internal sealed record Topic(string Path, ImmutableArray<string> Names, Func<Explanation> Explain);
