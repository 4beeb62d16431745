namespace CoatPlan.Problems;

/// <summary>A place in a text, both counted from 1; <c>default</c> (0, 0) means that the value came from no text.</summary>
/// <remarks>A mark takes part in the equality of the record that carries it: the same surface on another line is not equal.</remarks>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The column in UTF-16 units, from 1.</param>
public readonly record struct Mark(int Line, int Column) : IComparable<Mark>
{
    /// <summary>Whether one place stands before another.</summary>
    /// <param name="other">The other place.</param>
    /// <returns>Less than zero: before; more than zero: behind.</returns>
    public int CompareTo(Mark other) => (Line, Column).CompareTo((other.Line, other.Column));

    /// <summary>Before.</summary>
    public static bool operator <(Mark left, Mark right) => left.CompareTo(right) < 0;

    /// <summary>Behind.</summary>
    public static bool operator >(Mark left, Mark right) => left.CompareTo(right) > 0;

    /// <summary>Before, or the same place.</summary>
    public static bool operator <=(Mark left, Mark right) => left.CompareTo(right) <= 0;

    /// <summary>Behind, or the same place.</summary>
    public static bool operator >=(Mark left, Mark right) => left.CompareTo(right) >= 0;
}
