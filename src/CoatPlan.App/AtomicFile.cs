namespace CoatPlan.App;

/// <summary>Writes a file so that its old or its new content is there at any moment, never half of one.</summary>
/// <remarks>Each way writes beside the file, flushes to the disk, renames, and flushes the folder; what cannot be written leaves the old content.</remarks>
internal static class AtomicFile
{
    private const string BesideEnds = ".new";

    private static readonly TimeSpan LeftBehind = TimeSpan.FromDays(1);

    /// <summary>Gives a file a new content.</summary>
    /// <param name="path">The file; a link is followed to what it names, and stays.</param>
    /// <param name="content">Its new content.</param>
    /// <exception cref="IOException">It cannot be written; the old content is still there.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written, or is marked read-only; the old content is still there.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content) =>
        Put(new FileInfo(path) is { LinkTarget: not null } link ? link.ResolveLinkTarget(returnFinalTarget: true)!.FullName : path, content, TakePlace);

    /// <summary>Puts a file at this very place: a link there is replaced, and what it names stays as it is.</summary>
    /// <param name="path">The file.</param>
    /// <param name="content">Its content.</param>
    /// <exception cref="IOException">It cannot be written; what was there still is.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written, or is marked read-only; what was there still is.</exception>
    public static void Replace(string path, ReadOnlySpan<byte> content) => Put(path, content, TakePlace);

    /// <summary>Makes a file that is not there yet; of two programs that make it at once, one does, and the other is told.</summary>
    /// <param name="path">The file.</param>
    /// <param name="content">Its content.</param>
    /// <exception cref="IOException">It cannot be written, or something is there already, which stays.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static void Create(string path, ReadOnlySpan<byte> content) => Put(path, content, TakeFreePlace);

    private static void Put(string path, ReadOnlySpan<byte> content, Action<string, string> place)
    {
        var target = Path.GetFullPath(path);
        var old = new FileInfo(target);
        var mode = OperatingSystem.IsWindows() || !old.Exists || old.LinkTarget is not null ? (UnixFileMode?)null : old.UnixFileMode;
        // Renaming would pass over the mark; a person who set it meant it.
        if (old is { Exists: true, LinkTarget: null, IsReadOnly: true } && (mode is null || !MayBeWritten(mode.Value)))
            throw new UnauthorizedAccessException("the file is marked read-only; make it writable, or save under another name");

        var beside = Path.Combine(Path.GetDirectoryName(target)!, $"{BesideBegins(target)}{Environment.ProcessId}{BesideEnds}");
        try
        {
            // Whatever lies there, a link of somebody else's included, is removed and not written through.
            File.Delete(beside);
            Fill(beside, content, mode);
            place(beside, target);
        }
        catch
        {
            Forget(beside);
            throw;
        }

        if (!OperatingSystem.IsWindows())
            UnixFiles.Flush(Path.GetDirectoryName(target)!);
        Sweep(target);
    }

    private static void TakePlace(string beside, string target) => File.Move(beside, target, overwrite: true);

    // On Unix the base library looks whether the place is free and then renames, which overwrites what came there in between.
    private static void TakeFreePlace(string beside, string target)
    {
        if (OperatingSystem.IsWindows())
            File.Move(beside, target, overwrite: false);
        else if (UnixFiles.TryGive(beside, target))
            Forget(beside);
        else
            ClaimAndTakePlace(beside, target);
    }

    // Where a file has one name only: an empty file claims the place, which one alone can make, and is renamed over.
    private static void ClaimAndTakePlace(string beside, string target)
    {
        new FileStream(target, FileMode.CreateNew, FileAccess.Write).Dispose();
        try
        {
            TakePlace(beside, target);
        }
        catch
        {
            Forget(target);
            throw;
        }
    }

    // What cannot be removed hides neither that the file is written nor why it is not.
    private static void Forget(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // It is swept after a day.
        }
    }

    private static void Fill(string beside, ReadOnlySpan<byte> content, UnixFileMode? mode)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        // What only its owner may read is at no moment readable for others.
        if (mode is not null && !OperatingSystem.IsWindows())
            options.UnixCreateMode = mode & (UnixFileMode.UserRead | UnixFileMode.UserWrite) | UnixFileMode.UserWrite;
        using (var file = new FileStream(beside, options))
        {
            file.Write(content);
            file.Flush();
            if (!OperatingSystem.IsWindows())
                UnixFiles.PutOnDisk(file.SafeFileHandle);
            // On Linux nothing is left to do; elsewhere the base library also empties the drive's own memory.
            if (!OperatingSystem.IsLinux())
                file.Flush(flushToDisk: true);
        }

        if (mode is { } same && !OperatingSystem.IsWindows())
            File.SetUnixFileMode(beside, same);
    }

    private static bool MayBeWritten(UnixFileMode mode) => (mode & (UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite)) != 0;

    private static string BesideBegins(string target) => $".{Path.GetFileName(target)}.";

    // A program that was killed while it wrote leaves its half behind. One that is a day old belongs to nobody who still writes.
    private static void Sweep(string target)
    {
        try
        {
            var begins = BesideBegins(target);
            foreach (var file in new DirectoryInfo(Path.GetDirectoryName(target)!).EnumerateFiles($".*{BesideEnds}"))
            {
                if (file.Name.Length > begins.Length + BesideEnds.Length
                    && file.Name.StartsWith(begins, StringComparison.Ordinal)
                    && file.Name[begins.Length..^BesideEnds.Length].All(char.IsAsciiDigit)
                    && DateTime.UtcNow - file.LastWriteTimeUtc > LeftBehind)
                {
                    file.Delete();
                }
            }
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // The file is written; what lies beside it is no reason to say otherwise.
        }
    }
}
