namespace CoatPlan.App;

/// <summary>Tells a place that cannot be written to, which is for the person to mend in the command, from a machine that cannot write now.</summary>
internal static class WriteFailure
{
    private const int CodeOfSystem = 0xFFFF;

    // Input or output error, file too large, no space left, quota exceeded (errno of Linux); no space left on Windows.
    private static readonly ImmutableArray<int> Machine = [5, 27, 28, 122, 112];

    /// <summary>What to throw for a failed write.</summary>
    /// <param name="path">What was to be written.</param>
    /// <param name="exception">What came of it.</param>
    /// <returns>A <see cref="MachineException"/> or a <see cref="BadInputException"/>; both name the path.</returns>
    public static Exception Of(string path, Exception exception)
    {
        var why = exception is ArgumentOutOfRangeException ? "it is larger than a file may be here" : exception.Message.ReplaceLineEndings(" ").TrimEnd();
        return IsOfTheMachine(exception)
            ? new MachineException($"{path}: cannot be written: {why}; what was there before is untouched. Make room, or write elsewhere, and try again", exception)
            : new BadInputException($"{path}: cannot be written: {why}");
    }

    /// <summary>Whether a write failed for want of room or a broken disk.</summary>
    /// <remarks>A write past the largest file that is allowed comes as an argument out of range.</remarks>
    /// <param name="exception">What came of it.</param>
    public static bool IsOfTheMachine(Exception exception) => exception is ArgumentOutOfRangeException || exception is IOException && Machine.Contains(exception.HResult & CodeOfSystem);
}
