namespace CoatPlan.Tests.Walls.Samples;

/// <summary>Data that can be changed after it is made, so that the wall can be seen to stand.</summary>
public sealed record Changeable
{
    public string Name { get; set; } = "";

    public List<string> Items { get; init; } = [];
}
