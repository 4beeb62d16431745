namespace CoatPlan.Cautions;

/// <summary>Something that is so in this job, and on what.</summary>
/// <remarks>"Black is an aerosol": key <c>method</c>, word <c>aerosol</c>, who "Satin black".</remarks>
/// <param name="Key">A key of cautions.yaml, as in <c>hazard</c>.</param>
/// <param name="Word">Its word.</param>
/// <param name="Who">Name of the surface or product it was found on; empty: the job.</param>
public sealed record CautionFact(string Key, string Word, string Who = "");
