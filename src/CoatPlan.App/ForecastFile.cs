namespace CoatPlan.App;

/// <summary>The forecast file that a job names: read only where it lies below the job's folder, or below one that the person allowed.</summary>
/// <remarks>A job may come from anybody. What it names is looked up with every link followed, so that no link leads out of the folder either.</remarks>
internal static class ForecastFile
{
    // As many as Linux follows before it takes them for a loop.
    private const int MostLinks = 40;

    /// <summary>Reads it.</summary>
    /// <param name="jobFile">The job file; null for one that has none, whose folder is the current one.</param>
    /// <param name="named">The path as the job writes it.</param>
    /// <param name="allowed">A further folder; null for none.</param>
    public static FileText Read(string? jobFile, string named, string? allowed)
    {
        try
        {
            var folder = Path.GetDirectoryName(Path.GetFullPath(jobFile ?? "job")) ?? "";
            var path = Path.GetFullPath(Path.Combine(folder, named));
            var real = Followed(path);
            if (!IsBelow(real, folder) && !(allowed is not null && IsBelow(real, Path.GetFullPath(allowed))))
                return FileText.Unreadable("it lies outside the job's folder, and no --hours-from allows its own");

            return FileText.Of(TextFile.Read(real, TextFile.LargestForecast));
        }
        catch (BadInputException exception)
        {
            return FileText.Unreadable(exception.Why);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return FileText.Unreadable(exception.Message.ReplaceLineEndings(" "));
        }
    }

    private static bool IsBelow(string real, string folder)
    {
        var from = Path.GetRelativePath(Followed(folder), real);
        return from != "." && from != ".." && !from.StartsWith($"..{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && !Path.IsPathRooted(from);
    }

    // The path without any link in it, be it a folder on the way or the file itself.
    private static string Followed(string path)
    {
        var links = 0;
        for (var at = 1; at > 0;)
        {
            at = path.IndexOf(Path.DirectorySeparatorChar, at);
            var part = at < 0 ? path : path[..at];
            if (new FileInfo(part).LinkTarget is { } target)
            {
                if (++links > MostLinks)
                    throw new IOException("its links lead in a circle");

                path = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(part) ?? "", target, at < 0 ? "" : path[(at + 1)..]));
                at = 1;
            }
            else if (at > 0)
            {
                at++;
            }
        }

        return path;
    }
}
