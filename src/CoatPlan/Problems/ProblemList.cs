namespace CoatPlan.Problems;

/// <summary>Collects the problems of one file, so that all are told in one go.</summary>
internal sealed class ProblemList
{
    /// <summary>More than these are cut off, and that is said: a file this wrong is mended step by step.</summary>
    public const int Most = 500;

    private readonly string? file;
    private readonly List<Problem> found = [];

    /// <param name="file">Name of the file as the user gave it; null: not said.</param>
    public ProblemList(string? file) => this.file = file;

    /// <summary>How many have been found.</summary>
    public int Count => found.Count;

    /// <summary>Whether no more problems are taken, so that none need be put into words.</summary>
    public bool IsFull => found.Count > Most;

    /// <summary>Notes a problem at a place.</summary>
    public void Add(Mark mark, Problem problem)
    {
        if (found.Count <= Most) found.Add(problem.At(mark) with { File = file });
    }

    /// <summary>Notes problems that know their place.</summary>
    public void Add(ImmutableArray<Problem> problems)
    {
        foreach (var problem in problems) Add(new(problem.Line, problem.Column), problem);
    }

    /// <summary>The problems in the order of the text, each told once.</summary>
    public ImmutableArray<Problem> InOrder()
    {
        var ordered = found.Distinct().OrderBy(problem => problem.Line).ThenBy(problem => problem.Column).ToImmutableArray();
        if (found.Count <= Most) return ordered;
        var last = ordered[^1];
        return ordered.Add(Sentences.TooManyProblems(Most).At(new(last.Line, last.Column)) with { File = file });
    }
}
