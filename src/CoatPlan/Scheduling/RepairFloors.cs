namespace CoatPlan.Scheduling;

/// <summary>What a plan holds back: work that could begin sooner than planned, and then would miss what follows it.</summary>
/// <remarks>The first coat is planned for 10:30 though all is ready at 9:50, since the second must follow within the hour and the lunch break is in between.</remarks>
internal static class RepairFloors
{
    /// <summary>
    /// For each activity the minute before which it is not begun, so that carrying the plan out as planned gives the plan's own finish: 0 for what may begin
    /// as soon as it can, the planned start for what is held back.
    /// </summary>
    /// <param name="frame">The network and its plan.</param>
    /// <param name="plan">The plan.</param>
    public static int[] Of(RepairFrame frame, Schedule plan)
    {
        int[] work = [.. frame.Activities.Select(a => a.Work)];
        var paces = new byte[frame.Count];
        var floors = new int[frame.Count];
        var finish = FinishOf(frame, plan);

        // Each round holds back one more.
        for (var round = 0; round <= frame.Count; round++)
        {
            var repair = new Repair(frame, floors);
            var found = repair.Run(work, paces);
            if (Early(frame, plan, repair, floors, found) is not { } early)
            {
                if (found == finish)
                {
                    return floors;
                }

                break;
            }

            floors[early] = plan.Placements[early].Start;
        }

        return [.. Enumerable.Range(0, frame.Count).Select(i => Skips(plan, i) ? 0 : Math.Max(0, plan.Placements[i].Start))];
    }

    // The first thing done otherwise than planned because something before it was begun too soon.
    private static int? Early(RepairFrame frame, Schedule plan, Repair repair, int[] floors, int found)
    {
        foreach (var activity in frame.Order)
        {
            foreach (var l in frame.Incoming[activity])
            {
                var link = frame.Links[l];
                var isOtherwise = repair.IsDone(activity) && !frame.IsFact[activity]
                    && (repair.IsRedone[l] || (link.Windows > 1 && repair.Decided[l] >= 0 && repair.Decided[l] != link.Planned));
                if (isOtherwise && CanBeHeld(frame, plan, link.From, floors))
                {
                    return link.From;
                }
            }
        }

        return found == Repair.Never ? frame.Order.Cast<int?>().FirstOrDefault(i => CanBeHeld(frame, plan, i!.Value, floors)) : null;
    }

    private static bool CanBeHeld(RepairFrame frame, Schedule plan, int activity, int[] floors) =>
        !frame.IsFact[activity] && !Skips(plan, activity) && floors[activity] < plan.Placements[activity].Start;

    private static int FinishOf(RepairFrame frame, Schedule plan) =>
        Enumerable.Range(0, frame.Count).Where(i => !Skips(plan, i)).Select(i => plan.Placements[i].End).DefaultIfEmpty(0).Max();

    private static bool Skips(Schedule plan, int activity) => !plan.Skipped.IsDefaultOrEmpty && plan.Skipped[activity];
}
