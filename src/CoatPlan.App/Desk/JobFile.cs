using System.Text;
using CoatPlan.Jobs;

namespace CoatPlan.App.Desk;

/// <summary>The file behind the desk: what was read from it, what was last written to it, and the copy that survives a crash.</summary>
internal sealed class JobFile : IDisposable
{
    private JobText read;

    private UnsavedCopy copy;

    private JobFile(string? path, JobText read, UnsavedCopy copy)
    {
        Path = path;
        this.read = read;
        this.copy = copy;
        Text = read.Text;
    }

    /// <summary>Where it is; null for a job that has no file yet.</summary>
    public string? Path { get; private set; }

    /// <summary>What it holds, as far as the desk knows.</summary>
    public string Text { get; private set; }

    /// <summary>What a person calls it.</summary>
    public string Name => Path is { } path ? System.IO.Path.GetFileName(path) : "new job";

    /// <summary>Opens a file.</summary>
    /// <param name="path">Where it is.</param>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public static JobFile Open(string path) => new(path, TextFile.ReadJob(path), UnsavedCopy.Beside(path));

    /// <summary>A job that has no file yet.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="copies">The folder of such jobs' unsaved work; null where none is kept.</param>
    public static JobFile Unnamed(string text, string? copies = null) => new(
        null, JobText.FromBytes(Encoding.UTF8.GetBytes(text), "new job"), copies is null ? UnsavedCopy.None : UnsavedCopy.OfNewJob(copies));

    /// <summary>Whether somebody else changed the file since it was read or written here.</summary>
    public bool ChangedOnDisk() => Path is { } path && File.Exists(path) && TextFile.JobTextOrNull(path) != Text;

    /// <summary>Writes the file, whole or not at all, and forgets the copy for a crash.</summary>
    /// <param name="text">Its new content.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    /// <exception cref="InvalidOperationException">It has no name yet.</exception>
    public void Save(string text)
    {
        var path = Path ?? throw new InvalidOperationException("a job without a file is saved under a name first");
        AtomicFile.Write(path, read.ToBytes(text).AsSpan());
        Text = text;
        copy.Forget();
    }

    /// <summary>Gives the job a file of its own, which was not there before.</summary>
    /// <param name="path">Where it shall be.</param>
    /// <param name="text">Its content.</param>
    /// <returns>Why it cannot be there, and everything is as it was; null: it is.</returns>
    public string? TrySaveAs(string path, string text)
    {
        try
        {
            AtomicFile.Create(path, read.ToBytes(text).AsSpan());
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return exception.Message.ReplaceLineEndings(" ");
        }

        copy.Forget();
        copy.Dispose();
        copy = UnsavedCopy.Beside(path);
        Path = path;
        Text = text;
        return null;
    }

    /// <summary>Reads the file again.</summary>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public string Reload()
    {
        if (Path is { } path)
        {
            read = TextFile.ReadJob(path);
            Text = read.Text;
        }

        return Text;
    }

    /// <summary>Keeps a copy of unsaved work, where one can be kept.</summary>
    /// <param name="text">The work.</param>
    public void KeepSafe(string text) => copy.Keep(read.ToBytes(text).AsSpan());

    /// <summary>Unsaved work that was left behind; null where there is none.</summary>
    public string? LeftBehind() => copy.Text() is { } left && left != Text ? left : null;

    /// <summary>Throws the copy for a crash away.</summary>
    public void Forget() => copy.Forget();

    /// <summary>Lets go of the copy for a crash; what it holds stays.</summary>
    public void Dispose() => copy.Dispose();
}
