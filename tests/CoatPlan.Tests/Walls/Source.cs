namespace CoatPlan.Tests.Walls;

/// <summary>The tree that the tests were built from.</summary>
internal static class Source
{
    /// <summary>The full path of a file or folder given from the root of the tree.</summary>
    public static string PathOf(string relative)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "CoatPlan.sln")))
            {
                return Path.Combine(folder.FullName, relative);
            }
        }

        throw new DirectoryNotFoundException("The tests do not run inside the tree of the solution.");
    }
}
