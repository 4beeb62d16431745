namespace CoatPlan.Scheduling;

/// <summary>Something that an activity leaves or takes is gone, or given back, before another starts, as it is in a schedule.</summary>
/// <param name="Before">The activity after whose end it is gone.</param>
/// <param name="After">The activity that starts then or later.</param>
/// <param name="Gone">From the first one's end to the minute from which the other may start; null means at the end.</param>
internal readonly record struct KeptOrder(int Before, int After, Func<int, int>? Gone)
{
    // A stretch is kept apart from this many that follow it; those after them follow in turn.
    private const int Followers = 16;

    // How many starts ahead those are looked for.
    private const int Sight = 200;

    public int GoneAt(int end) => Gone is null ? end : Math.Max(end, Gone(end));

    /// <summary>The order in which a schedule shares its resources and its space: any starts that keep it share them as well.</summary>
    public static List<KeptOrder> Of(Scheduled scheduled)
    {
        var orders = new List<KeptOrder>(scheduled.Frame.Count * Followers);
        for (var r = 0; r < scheduled.Stretches.Length; r++)
        {
            AddHandovers(scheduled.Stretches[r], scheduled.Frame.Capacity[r], orders);
        }

        AddAvoidances(scheduled, orders);
        return orders;
    }

    // Each unit of a resource goes from hand to hand; whoever takes it takes it from those who gave theirs back longest ago.
    private static void AddHandovers(Scheduled.Stretch[] stretches, int capacity, List<KeptOrder> orders)
    {
        var inUse = new PriorityQueue<(Scheduled.Stretch Giver, int Amount), (int, int)>();
        var free = new Queue<(Scheduled.Stretch? Giver, int Amount)>();
        free.Enqueue((null, capacity));
        foreach (var (taker, number) in stretches.Select((s, n) => (s, n)))
        {
            while (inUse.TryPeek(out var next, out var key) && key.Item1 <= taker.Start)
            {
                inUse.Dequeue();
                free.Enqueue((next.Giver, next.Amount));
            }

            var wanted = taker.Amount;
            while (wanted > 0 && free.TryPeek(out var next))
            {
                if (next.Giver is { } giver && giver.Until != taker.From)
                {
                    orders.Add(new KeptOrder(giver.Until, taker.From, giver.Hold is null ? null : giver.Hold.Release));
                }

                if (next.Amount > wanted)
                {
                    var rest = free.Count - 1;
                    free.Dequeue();
                    free.Enqueue((next.Giver, next.Amount - wanted));
                    for (; rest > 0; rest--)
                    {
                        free.Enqueue(free.Dequeue());
                    }

                    wanted = 0;
                }
                else
                {
                    free.Dequeue();
                    wanted -= next.Amount;
                }
            }

            inUse.Enqueue((taker, taker.Amount - wanted), (taker.End, number));
        }
    }

    private static void AddAvoidances(Scheduled scheduled, List<KeptOrder> orders)
    {
        var frame = scheduled.Frame;
        var placements = scheduled.Schedule.Placements;
        var byStart = Enumerable.Range(0, frame.Count).OrderBy(i => placements[i].Start).ThenBy(i => i).ToArray();
        var (avoiders, leavers) = (new List<(int Activity, int? ExceptKey)>(), new List<(int Activity, Presence Presence)>());
        foreach (var kind in frame.Kinds.Keys)
        {
            avoiders.Clear();
            leavers.Clear();
            foreach (var i in byStart)
            {
                foreach (var avoidance in frame.Activities[i].Avoids)
                {
                    if (avoidance.Kind == kind)
                    {
                        avoiders.Add((i, avoidance.ExceptKey));
                    }
                }

                foreach (var presence in frame.Activities[i].Presences)
                {
                    if (presence.Kind == kind)
                    {
                        leavers.Add((i, presence));
                    }
                }
            }

            foreach (var (avoider, exceptKey) in avoiders)
            {
                var first = FirstFrom(leavers.Count, l => placements[leavers[l].Activity].Start, placements[avoider].End);
                var until = Math.Min(leavers.Count, first + Sight);
                for (var (l, following) = (first, 0); l < until && following < Followers; l++)
                {
                    if (leavers[l].Activity != avoider && leavers[l].Presence.Key != exceptKey)
                    {
                        orders.Add(new KeptOrder(avoider, leavers[l].Activity, null));
                        following++;
                    }
                }
            }

            foreach (var (leaver, presence) in leavers)
            {
                var first = FirstFrom(avoiders.Count, a => placements[avoiders[a].Activity].Start, Frame.GoneAt(presence, placements[leaver].End));
                var until = Math.Min(avoiders.Count, first + Sight);
                for (var (a, following) = (first, 0); a < until && following < Followers; a++)
                {
                    if (avoiders[a].Activity != leaver && avoiders[a].ExceptKey != presence.Key)
                    {
                        orders.Add(new KeptOrder(leaver, avoiders[a].Activity, presence.Until));
                        following++;
                    }
                }
            }
        }
    }

    // The first of some in order of their starts that starts at or after a minute; their number where none does.
    private static int FirstFrom(int count, Func<int, int> startOf, int minute)
    {
        var low = 0;
        var high = count;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (startOf(middle) >= minute)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return low;
    }
}
