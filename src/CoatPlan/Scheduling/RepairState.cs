namespace CoatPlan.Scheduling;

/// <summary>How far a run has come: what is placed where, which windows are in use, and what was added or done again for it.</summary>
/// <remarks>Arrays that the parts of a repair write to, since runs allocate nothing.</remarks>
/// <param name="frame">The network at every pace.</param>
/// <param name="floors">For each activity the minute before which it is not begun.</param>
internal sealed class RepairState(RepairFrame frame, int[] floors)
{
    /// <summary>The window of a link that was not decided on.</summary>
    public const int Undecided = -1;

    /// <summary>For each activity the minute before which it is not begun.</summary>
    public int[] Floors { get; } = floors;

    /// <summary>What the placed take of the resources.</summary>
    public RepairUse Use { get; } = new(frame);

    /// <summary>What the placed leave in the space.</summary>
    public RepairSpace Space { get; } = new(frame);

    /// <summary>Where each activity is placed.</summary>
    public Placement[] Placements { get; } = new Placement[frame.Count];

    /// <summary>Where each activity counts as placed for what is counted from it: where it was done again, if it was.</summary>
    public Placement[] Anchors { get; } = new Placement[frame.Count];

    /// <summary>Whether each activity is placed.</summary>
    public bool[] IsPlaced { get; } = new bool[frame.Count];

    /// <summary>Whether a window in use asks for each activity.</summary>
    public bool[] IsWanted { get; } = new bool[frame.Count];

    /// <summary>For each link the window in use.</summary>
    public int[] Decided { get; } = new int[frame.Links.Length];

    /// <summary>For each activity the work that windows added, and what was done again for it.</summary>
    public int[] AddedWork { get; } = new int[frame.Count];

    /// <summary>For each link whether its earlier activity was done again.</summary>
    public bool[] IsRedone { get; } = new bool[frame.Links.Length];

    /// <summary>For each activity its work.</summary>
    public int[] Work { get; private set; } = [];

    /// <summary>For each activity the pace at which what it leaves dries.</summary>
    public byte[] Paces { get; private set; } = [];

    /// <summary>Nothing is placed.</summary>
    public void Clear()
    {
        Use.Clear();
        Space.Clear();
        Array.Clear(IsPlaced);
        Array.Clear(IsWanted);
        Array.Clear(AddedWork);
        Array.Clear(IsRedone);
        Array.Fill(Decided, Undecided);
    }

    /// <summary>From here on work takes so long and dries at such a pace.</summary>
    public void Take(int[] work, byte[] paces) => (Work, Paces) = (work, paces);

    /// <summary>The last minute at which a window of a link is open; <see cref="Repair.Never"/> where it does not close.</summary>
    public int ClosesAt(int l, int window)
    {
        var link = frame.Links[l];
        return link.Most[Paces[link.From]][window] is { } most ? most.After(Anchors[link.From]) : Repair.Never;
    }

    /// <summary>The window of a link that is in use, or was planned where none is yet.</summary>
    public int WindowOf(int l) => Decided[l] >= 0 ? Decided[l] : frame.Links[l].Planned;

    /// <summary>Whether a link says anything: what it is counted from is placed, and nothing silences it.</summary>
    public bool Speaks(RepairLink link)
    {
        if (!IsPlaced[link.From])
        {
            return false;
        }

        foreach (var silencer in link.Unless)
        {
            if (IsPlaced[silencer] || IsWanted[silencer])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether all that leads to an activity is placed.</summary>
    public bool IsReady(int activity)
    {
        foreach (var l in frame.Incoming[activity])
        {
            var from = frame.Links[l].From;
            if (!IsPlaced[from] && (frame.AskedBy[from] < 0 || IsWanted[from]))
            {
                return false;
            }
        }

        return true;
    }
}
