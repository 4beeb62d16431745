namespace CoatPlan.Tests.Validator;

/// <summary>From a minute to a later one; touching spans do not overlap.</summary>
internal sealed record Span(double Start, double End)
{
    public double Length => End - Start;

    public bool Overlaps(Span other) => Start < other.End && other.Start < End;

    public bool Holds(Span other) => Start <= other.Start && other.End <= End;
}
