namespace CoatPlan.Tests.Walls.Samples.Lower;

/// <summary>A room that names one it may not, so that the walls can be seen to stand.</summary>
internal static class Room
{
    public static int Ask() => new Upper.Answer().Value;
}
