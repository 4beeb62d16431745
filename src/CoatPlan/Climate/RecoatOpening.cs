namespace CoatPlan.Climate;

/// <summary>One alternative of a label's windows, in the job's own air: when the next coat may start.</summary>
/// <param name="Alternative">Place in the label's list of windows, from 0.</param>
/// <param name="LabelMinutes">From when it opens at the label's conditions, minutes after the coat before.</param>
/// <param name="Earliest">First permitted start, minutes from the job's start; null: it never opens.</param>
/// <param name="Latest">Last permitted start, minutes from the job's start; null: it never closes.</param>
public sealed record RecoatOpening(int Alternative, double LabelMinutes, int? Earliest, int? Latest)
{
    /// <summary>Whether it is closed before it opens: in this air the window does not exist, and the next one is used.</summary>
    public bool IsVoid => Earliest is null || Latest < Earliest;
}
