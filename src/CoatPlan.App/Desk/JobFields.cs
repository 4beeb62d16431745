using CoatPlan.Jobs;

namespace CoatPlan.App.Desk;

/// <summary>Where one is in the fields of the job: which map or list is open, and which row of it is chosen.</summary>
internal sealed class JobFields
{
    private readonly Stack<int> rowsAbove = new();

    /// <summary>The map or list that is open.</summary>
    public JobPath Path { get; private set; } = JobPath.Root;

    /// <summary>The chosen row, from 0; the one after the last adds something, where something can be added.</summary>
    public int At { get; set; }

    /// <summary>Opens a map or list.</summary>
    /// <param name="path">The way to it.</param>
    public void Open(JobPath path)
    {
        rowsAbove.Push(At);
        (Path, At) = (path, 0);
    }

    /// <summary>Goes straight to a map or list.</summary>
    /// <param name="path">The way to it.</param>
    public void GoTo(JobPath path)
    {
        rowsAbove.Clear();
        (Path, At) = (path, 0);
    }

    /// <summary>Goes back to what the open one is in; does nothing at the top.</summary>
    /// <returns>Whether there was something to go back to.</returns>
    public bool Close()
    {
        if (Path.Steps.IsEmpty)
            return false;

        var above = JobPath.Root;
        foreach (var step in Path.Steps[..^1])
            above = step.Key is { } key ? above.Key(key) : above.At(step.Index);
        (Path, At) = (above, rowsAbove.TryPop(out var row) ? row : 0);
        return true;
    }

    /// <summary>Rows of an outline, with the one that adds something.</summary>
    /// <param name="outline">The outline.</param>
    public static int RowsOf(Outline outline) => outline.Rows.Length + (outline.TakesKeys || outline.TakesItems ? 1 : 0);
}
