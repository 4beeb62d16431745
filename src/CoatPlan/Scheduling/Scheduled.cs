namespace CoatPlan.Scheduling;

/// <summary>A network together with a schedule of it, ready to be asked about.</summary>
internal sealed class Scheduled
{
    public Scheduled(Network network, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        Frame = new Frame(network);
        if (schedule.Placements.Length != Frame.Count || schedule.WindowInUse.Length != Frame.Links.Length)
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"A schedule of {schedule.Placements.Length} activities and {schedule.WindowInUse.Length} links is not one of this network, which has {Frame.Count} and {Frame.Links.Length}."),
                nameof(schedule));
        }

        Schedule = schedule;
        AddedWork = new int[Frame.Count];
        for (var l = 0; l < Frame.Links.Length; l++)
        {
            if (InUse(l) is { } window)
            {
                AddedWork[Frame.Links[l].To] += window.AddedWork;
            }
        }

        Stretches = [.. Frame.Capacity.Select((_, r) => StretchesOf(r))];
    }

    public Frame Frame { get; }

    public Schedule Schedule { get; }

    /// <summary>For each activity, the minutes of work its windows add.</summary>
    public int[] AddedWork { get; }

    /// <summary>For each resource, who has how much of it and when, facts included, in order of start.</summary>
    public Stretch[][] Stretches { get; }

    /// <summary>The window in which a link holds; null for a link to a fact, of which nothing is asked.</summary>
    public Window? InUse(int link) =>
        Frame.IsFixed[Frame.Links[link].To] || Schedule.WindowInUse[link] < 0 ? null : Frame.Links[link].Windows[Schedule.WindowInUse[link]];

    private Stretch[] StretchesOf(int resource)
    {
        var stretches = new List<Stretch>();
        for (var i = 0; i < Frame.Count; i++)
        {
            var at = Schedule.Placements[i];
            foreach (var demand in Frame.Demands[i])
            {
                if (demand.Resource == resource && at.End > at.Start)
                {
                    stretches.Add(new Stretch(i, i, null, demand.Amount, at.Start, at.End));
                }
            }

            foreach (var h in Frame.HoldsFrom[i])
            {
                var hold = Frame.Holds[h];
                var givenBack = hold.GivenBackAt(Schedule.Placements[hold.Until].End);
                if (hold.Resource == resource && givenBack > at.Start)
                {
                    stretches.Add(new Stretch(i, hold.Until, hold, hold.Amount, at.Start, givenBack));
                }
            }
        }

        return [.. stretches.OrderBy(s => s.Start).ThenBy(s => s.End).ThenBy(s => s.From)];
    }

    /// <summary>Some of a resource taken at the start of one activity and given back after the end of the same or another.</summary>
    internal sealed record Stretch(int From, int Until, FrameHold? Hold, int Amount, int Start, int End)
    {
        /// <summary>When it is given back, for an end of the last activity.</summary>
        public int GivenBackAt(int end) => Hold is null ? end : Hold.GivenBackAt(end);
    }
}
