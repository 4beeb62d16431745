namespace CoatPlan.Tests.Walls.Samples;

/// <summary>Does what the core may not, so that the ban can be seen to hold.</summary>
internal static class Impure
{
    public static DateTime Clock() => DateTime.UtcNow;

    public static int Dice() => new Random().Next();

    public static string Folder() => File.ReadAllText("nowhere");
}
