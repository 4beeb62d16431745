namespace CoatPlan.Scheduling;

/// <summary>Things that are numbered from 0, by the groups that they belong to.</summary>
internal static class Groups
{
    /// <summary>For each group the numbers of what belongs to it, rising.</summary>
    /// <param name="count">How many groups there are.</param>
    /// <param name="things">How many things there are.</param>
    /// <param name="groupOf">From the number of a thing to that of its group; −1 for one that belongs to none.</param>
    public static int[][] Of(int count, int things, Func<int, int> groupOf)
    {
        var sizes = new int[count];
        for (var i = 0; i < things; i++)
        {
            if (groupOf(i) is >= 0 and var group)
            {
                sizes[group]++;
            }
        }

        var groups = Array.ConvertAll(sizes, static size => size == 0 ? [] : new int[size]);
        for (var i = things - 1; i >= 0; i--)
        {
            if (groupOf(i) is >= 0 and var group)
            {
                groups[group][--sizes[group]] = i;
            }
        }

        return groups;
    }
}
