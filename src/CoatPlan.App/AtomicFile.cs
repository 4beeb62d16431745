namespace CoatPlan.App;

/// <summary>Writes a file so that its old or its new content is there at any moment, never half of one.</summary>
internal static class AtomicFile
{
    /// <summary>Writes beside the file, flushes to the disk, and renames.</summary>
    /// <param name="path">The file; a link is followed to what it names.</param>
    /// <param name="content">Its new content.</param>
    /// <exception cref="IOException">It cannot be written; the old content is still there.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; the old content is still there.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        var target = Path.GetFullPath(File.Exists(path) ? File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path : path);
        var beside = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Environment.ProcessId}.new");
        try
        {
            using (var file = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None))
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }

            if (!OperatingSystem.IsWindows() && File.Exists(target))
                File.SetUnixFileMode(beside, File.GetUnixFileMode(target));
            File.Move(beside, target, overwrite: true);
        }
        catch
        {
            File.Delete(beside);
            throw;
        }
    }
}
