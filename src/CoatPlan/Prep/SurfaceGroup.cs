namespace CoatPlan.Prep;

/// <summary>Surfaces that share a system and where they are worked on, so that they can be prepared and sprayed together.</summary>
/// <param name="Id">Readable and unique in the job: the system's key, with <c>-in-place</c> where some of its surfaces stay and some do not.</param>
/// <param name="System">Key of the system.</param>
/// <param name="Stays">Whether they stay on the vehicle.</param>
/// <param name="Surfaces">Ids in the order of the job.</param>
public sealed record SurfaceGroup(string Id, string System, bool Stays, ImmutableArray<string> Surfaces);
