namespace CoatPlan.Tests.Walls.Samples.Upper;

/// <summary>A room that is named.</summary>
internal sealed class Answer
{
    public int Value { get; } = 42;
}
