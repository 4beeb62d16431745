using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace CoatPlan.App;

/// <summary>What the base library does not reach of the names in a folder: giving a file a name that must be free, and putting the names themselves on the disk.</summary>
/// <remarks>Both calls are in POSIX with the same numbers on every system. Elsewhere the base library's own rename does the first, and the file system's journal the second.</remarks>
internal static class UnixNames
{
    // EEXIST and O_RDONLY, which Linux, macOS and the BSDs number alike.
    private const int Taken = 17;
    private const int ToRead = 0;

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

    [DllImport("libc", EntryPoint = "link", SetLastError = true)]
    private static extern int Link(byte[] path, byte[] name);

    [DllImport("libc", EntryPoint = "open")]
    private static extern int Open(byte[] path, int how);
}
