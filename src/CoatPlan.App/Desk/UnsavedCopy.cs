namespace CoatPlan.App.Desk;

/// <summary>The copy of work that was never saved, which is there again after the program was killed.</summary>
internal sealed class UnsavedCopy : IDisposable
{
    // Far more new jobs than anybody has open; the one beyond keeps no copy.
    private const int MostNewJobs = 100;

    private readonly FileStream? claim;

    private UnsavedCopy(string? path, FileStream? claim = null)
    {
        Path = path;
        this.claim = claim;
    }

    /// <summary>Keeps nothing.</summary>
    public static UnsavedCopy None { get; } = new(null);

    /// <summary>Where it is; null where none is kept.</summary>
    public string? Path { get; }

    /// <summary>The copy of a job that has a file: hidden beside it.</summary>
    /// <param name="job">The job's file.</param>
    public static UnsavedCopy Beside(string job) => new(System.IO.Path.Combine(
        System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(job))!, $".{System.IO.Path.GetFileName(job)}.unsaved"));

    /// <summary>The copy of a job without a file. What was left behind comes first, and no copy is another running program's: each holds its own for as long as it runs.</summary>
    /// <param name="folder">Where such copies are kept; made where it does not exist.</param>
    public static UnsavedCopy OfNewJob(string folder)
    {
        try
        {
            Directory.CreateDirectory(folder);
            return Enumerable.Range(1, MostNewJobs)
                .Select(number => System.IO.Path.Combine(folder, number == 1 ? "new.job.yaml.unsaved" : FormattableString.Invariant($"new-{number}.job.yaml.unsaved")))
                .OrderBy(path => File.Exists(path) ? 0 : 1)
                .Select(Claimed)
                .FirstOrDefault(copy => copy is not null) ?? None;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // A machine that keeps no copies is no reason not to start.
            return None;
        }
    }

    /// <summary>Keeps the work; a disk that cannot take it is no reason to stop.</summary>
    /// <param name="content">The work.</param>
    public void Keep(ReadOnlySpan<byte> content)
    {
        if (Path is null)
            return;

        try
        {
            // The folder may have gone meanwhile, with all that was in it.
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Path)!);
            AtomicFile.Replace(Path, content);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // The work is still on the desk; saving will say what is wrong with the disk.
        }
    }

    /// <summary>The work that was left behind; null where there is none that can be read.</summary>
    public string? Text() => Path is null ? null : TextFile.JobTextOrNull(Path);

    /// <summary>Throws it away.</summary>
    public void Forget()
    {
        if (Path is null)
            return;

        try
        {
            File.Delete(Path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // A copy too many is offered again next time; that harms nobody.
        }
    }

    /// <summary>Lets go of it; what it holds stays.</summary>
    public void Dispose() => claim?.Dispose();

    // Locked and not merely there: the lock of a program that was killed goes with it.
    private static UnsavedCopy? Claimed(string path)
    {
        try
        {
            return new UnsavedCopy(path, new FileStream(path + ".lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (IOException)
        {
            return null;
        }
    }
}
