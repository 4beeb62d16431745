using System.Text;
using CoatPlan.Jobs;

namespace CoatPlan.App;

/// <summary>Reads files that people wrote, with a limit on their size, as UTF-8.</summary>
internal static class TextFile
{
    /// <summary>Largest preset file, bytes, and largest sum of those in one folder.</summary>
    public const int LargestPresets = JobText.MostBytes;

    /// <summary>Largest forecast file, bytes. A year by the hour takes two megabytes.</summary>
    public const int LargestForecast = 16 * 1024 * 1024;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a job file.</summary>
    /// <param name="path">Its path.</param>
    /// <exception cref="BadInputException">It cannot be read, is too large or is no text.</exception>
    public static JobText ReadJob(string path) => Checked(JobText.FromBytes(Bytes(path, JobText.MostBytes + 1), path));

    /// <summary>What a job file holds; null where it is not there or cannot be read.</summary>
    /// <param name="path">Its path.</param>
    public static string? JobTextOrNull(string path)
    {
        try
        {
            return File.Exists(path) ? ReadJob(path).Text : null;
        }
        catch (BadInputException)
        {
            return null;
        }
    }

    /// <summary>The text of a job file that comes as a stream.</summary>
    /// <param name="stream">The stream, read to its end or to the limit.</param>
    /// <param name="name">What messages call it.</param>
    /// <exception cref="BadInputException">It is too large or no text.</exception>
    public static JobText ReadJob(Stream stream, string name) => Checked(JobText.FromBytes(Bytes(stream, JobText.MostBytes + 1), name));

    /// <summary>The text of a file.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="largest">Most bytes it may have.</param>
    /// <exception cref="BadInputException">It cannot be read, is too large or is not UTF-8.</exception>
    public static string Read(string path, int largest)
    {
        // Only what holds something is opened: a pipe with nobody at its other end would be waited for.
        if (new FileInfo(path) is { Exists: true, Length: 0 })
            return "";

        var bytes = Bytes(path, largest + 1);
        if (bytes.Length > largest)
            throw new BadInputException($"{path}: is larger than {largest / (1024 * 1024)} MB");

        try
        {
            return Strict.GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException exception)
        {
            throw new BadInputException($"{path}: is not UTF-8 (byte {exception.Index + 1}); save it as UTF-8");
        }
    }

    private static JobText Checked(JobText job) =>
        job.Problems.IsEmpty ? job : throw new BadInputException([.. job.Problems.Select(problem => problem.ToString())]);

    private static byte[] Bytes(string path, int most)
    {
        try
        {
            if (Directory.Exists(path))
                throw new BadInputException($"{path}: is a folder; expected a file");

            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            return Bytes(file, most);
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new BadInputException($"{path}: no such file");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BadInputException($"{path}: cannot be read: {exception.Message.ReplaceLineEndings(" ").TrimEnd()}");
        }
    }

    private static byte[] Bytes(Stream stream, int most)
    {
        var bytes = new byte[64 * 1024];
        var held = 0;
        int read;
        while (held < most && (read = stream.Read(bytes, held, Math.Min(bytes.Length, most) - held)) > 0)
        {
            held += read;
            if (held == bytes.Length)
                Array.Resize(ref bytes, Math.Min(bytes.Length * 2, most));
        }

        return bytes[..held];
    }
}
