namespace CoatPlan.App;

/// <summary>How the program ends; the numbers are part of the contract with scripts.</summary>
internal static class ExitCode
{
    /// <summary>Done; a plan meets everything that was asked, warnings or not.</summary>
    public const int Done = 0;

    /// <summary>Anything that is nobody's mistake but the program's or the machine's.</summary>
    public const int Trouble = 1;

    /// <summary>Bad input or bad usage.</summary>
    public const int BadInput = 2;

    /// <summary>A plan was asked for that cannot be.</summary>
    public const int NoSuchPlan = 3;

    /// <summary>Each code with when it is given, the usual one first.</summary>
    public static ImmutableArray<(int Code, string When)> Meanings { get; } =
    [
        (Done, "done"),
        (BadInput, "bad input or bad usage"),
        (NoSuchPlan, "there is no plan that meets what was asked"),
        (Trouble, "anything else"),
    ];
}
