namespace CoatPlan.App;

/// <summary>Something outside the program cannot be used as asked: a file that is not there, is too large, is not text. Caught at the edge.</summary>
internal sealed class BadInputException : Exception
{
    /// <summary>A line for each thing that is wrong.</summary>
    public ImmutableArray<string> Lines { get; }

    /// <summary>What is wrong, without the file's name.</summary>
    public string Why => Message[(Message.IndexOf(": ", StringComparison.Ordinal) is >= 0 and var colon ? colon + 2 : 0)..];

    public BadInputException(params ImmutableArray<string> lines)
        : base(lines.IsEmpty ? "" : lines[0])
    {
        Lines = lines;
    }
}
