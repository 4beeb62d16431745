using CoatPlan.Jobs;

namespace CoatPlan.Timetable;

/// <summary>What is tried next where a gap between two coats cannot be passed as it was meant to be.</summary>
internal static class GapMending
{
    /// <summary>A wait from which on a film is dusted off again before the next coat, minutes. Source: common practice, half a working day.</summary>
    public const int RestMinutes = 240;

    /// <summary>The next way to pass a gap: the label's next window, then the rework that a missed window asks; null where none is left.</summary>
    public static GapChoice? Next(Batch batch, int gap, GapChoice now, Workplace place)
    {
        if (now.Reworked)
            return null;

        var film = batch.Coats[gap];
        var windows = BatchDrawing.WindowsBetween(film, batch.Coats[gap + 1]);
        if (now.Window + 1 < windows.Length)
            return InWindow(now.Window + 1, windows[now.Window + 1].From, batch, place);
        if (windows.Any(window => window.To is null) || film.Label.Missed == MissedRework.Strip)
            return null;
        return new GapChoice(now.Window, Reworked: true, Rested: true, Unmasked: WouldOutstayTape(film.Label.Times.Through, batch, place));
    }

    /// <summary>A gap passed in one of its label's windows.</summary>
    public static GapChoice InWindow(int window, Duration opens, Batch batch, Workplace place) =>
        new(window, Reworked: false, Rested: opens.TotalMinutes >= RestMinutes, Unmasked: WouldOutstayTape(opens, batch, place));

    /// <summary>Gaps that turned out to be rests, dusted off before the next coat; null where every gap is as it was meant to be.</summary>
    public static Draft? Rested(Draft draft, WorkNetwork drawn, Scheduling.Schedule schedule)
    {
        var rested = draft;
        for (var b = 0; b < draft.Batches.Length; b++)
        {
            for (var gap = 0; gap < draft.Gaps[b].Length; gap++)
            {
                var choice = draft.Gaps[b][gap];
                if (!choice.Rested && WaitBetween(draft.Batches[b], gap, drawn, schedule) >= RestMinutes)
                    rested = rested.With(b, gap, choice with { Rested = true });
            }
        }

        return ReferenceEquals(rested, draft) ? null : rested;
    }

    private static bool WouldOutstayTape(Duration wait, Batch batch, Workplace place) =>
        IsMasked(batch) && wait.TotalMinutes >= place.TapeLimitMinutes - RestMinutes;

    /// <summary>Whether tape is put on its surfaces.</summary>
    public static bool IsMasked(Batch batch) => batch.Operations.Any(operation => operation.Word == "mask");

    private static int WaitBetween(Batch batch, int gap, WorkNetwork drawn, Scheduling.Schedule schedule)
    {
        var earlier = IndexOf(batch, batch.Coats[gap], drawn);
        var later = IndexOf(batch, batch.Coats[gap + 1], drawn);
        return schedule.Placements[later].Start - schedule.Placements[earlier].End;
    }

    private static int IndexOf(Batch batch, CoatTask coat, WorkNetwork drawn)
    {
        for (var i = 0; i < drawn.Nodes.Length; i++)
        {
            if (ReferenceEquals(drawn.Nodes[i].Coat, coat) && drawn.Nodes[i].Batch!.Key == batch.Key)
                return i;
        }

        throw new ArgumentException($"The network has no coat {coat.Layer}.{coat.Coat} of {batch.Key}.", nameof(drawn));
    }
}
