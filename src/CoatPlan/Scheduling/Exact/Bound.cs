namespace CoatPlan.Scheduling.Exact;

/// <summary>
/// "This side of a variable has reached this value." A variable x has two sides: 2x holds its least value, 2x+1 the negative of its greatest,
/// so that both only ever grow while decisions are added.
/// </summary>
internal readonly record struct Bound(int Side, int Value)
{
    /// <summary>The bound that holds exactly when this one does not.</summary>
    public Bound Not => new(Side ^ 1, 1 - Value);

    public int Variable => Side >> 1;

    /// <summary>x is at least the value.</summary>
    public static Bound AtLeast(int variable, int value) => new(2 * variable, value);

    /// <summary>x is at most the value.</summary>
    public static Bound AtMost(int variable, int value) => new((2 * variable) + 1, -value);
}
