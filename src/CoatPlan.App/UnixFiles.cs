using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace CoatPlan.App;

/// <summary>
/// What the base library does not reach of files and their names: knowing that a content is on the disk, giving a file a name that must be free, and putting the names
/// themselves on the disk.
/// </summary>
/// <remarks>
/// All calls are in POSIX. Elsewhere the base library's own flush does the first, its own rename the second, and the file system's journal the third.
/// </remarks>
internal static class UnixFiles
{
    // EEXIST and O_RDONLY, which Linux, macOS and the BSDs number alike.
    private const int Taken = 17;
    private const int ToRead = 0;

    // EINTR, which they number alike too.
    private const int Interrupted = 4;

    // A file system that knows no flushing: EINVAL; ENOSYS and EOPNOTSUPP of Linux, then those of macOS and the BSDs. Linux gives none of the last three for a flush.
    private static readonly ImmutableArray<int> KnowsNoFlush = [22, 38, 95, 78, 45, 102];

    /// <summary>Puts the content of a file on the disk, and says so where it does not get there: the base library's own flush passes that over.</summary>
    /// <param name="file">The file, all that was written to it handed to the system already.</param>
    /// <exception cref="IOException">The disk did not take it: it is broken, full, or the quota is used up.</exception>
    public static void PutOnDisk(SafeFileHandle file)
    {
        int error;
        do
            error = Sync(file) == 0 ? 0 : Marshal.GetLastPInvokeError();
        while (error == Interrupted);

        if (error != 0 && !KnowsNoFlush.Contains(error))
            throw new IOException($"the disk did not take it: {Marshal.GetPInvokeErrorMessage(error)}", error);
    }

    /// <summary>Gives a file a second name, where nothing of that name is there: of two that try at once, one does.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its other name, in the same folder.</param>
    /// <returns>Whether it has it; if not, the file system knows no second names, or the folder may not be written to.</returns>
    /// <exception cref="IOException">The name is taken.</exception>
    public static bool TryGive(string path, string name)
    {
        if (Link(Bytes(path), Bytes(name)) == 0)
            return true;

        return Marshal.GetLastPInvokeError() == Taken ? throw new IOException($"The file '{name}' already exists.") : false;
    }

    /// <summary>Puts the names in a folder on the disk, so that a file renamed there is found after the power failed.</summary>
    /// <remarks>A folder that cannot be flushed is left: what was written is in place and on the disk, and without the new name the old content is found, whole.</remarks>
    /// <param name="folder">The folder.</param>
    public static void Flush(string folder)
    {
        using var handle = new SafeFileHandle(Open(Bytes(folder), ToRead), ownsHandle: true);
        if (handle.IsInvalid)
            return;

        try
        {
            RandomAccess.FlushToDisk(handle);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // See the remarks.
        }
    }

    private static byte[] Bytes(string path) => Encoding.UTF8.GetBytes(path + '\0');

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static extern int Sync(SafeFileHandle file);

    [DllImport("libc", EntryPoint = "link", SetLastError = true)]
    private static extern int Link(byte[] path, byte[] name);

    [DllImport("libc", EntryPoint = "open")]
    private static extern int Open(byte[] path, int how);
}
