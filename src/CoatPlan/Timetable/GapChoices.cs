using CoatPlan.Presets;
using CoatPlan.Jobs;

namespace CoatPlan.Timetable;

/// <summary>The ways in which a gap between two coats may be passed; the schedule uses one of them.</summary>
internal static class GapChoices
{
    /// <summary>A wait from which on a film is dusted off again before the next coat, minutes. Source: common practice, half a working day.</summary>
    public const int RestMinutes = 240;

    /// <summary>
    /// Each window of the label, with a rest where it lasts so long, and with the tape off meanwhile; the rework of a missed window where none stays open.
    /// </summary>
    /// <param name="film">The coat before the gap.</param>
    /// <param name="windows">What its label permits for the coat after it.</param>
    /// <param name="isTaped">Whether tape is on.</param>
    /// <param name="isDulled">Whether the film is dulled and cleaned in any case.</param>
    public static ImmutableArray<GapChoice> Of(CoatTask film, ImmutableArray<CoatWindow> windows, bool isTaped, bool isDulled)
    {
        var ways = ImmutableArray.CreateBuilder<GapChoice>();
        for (var k = 0; k < windows.Length; k++)
        {
            if (isDulled || windows[k].From.TotalMinutes < RestMinutes)
                ways.Add(new GapChoice(k, Reworked: false, Rested: false, Unmasked: false));
            if (!isDulled && (windows[k].To is not { } to || to.TotalMinutes > RestMinutes))
                ways.Add(new GapChoice(k, Reworked: false, Rested: true, Unmasked: false));
            if (isTaped)
                ways.Add(new GapChoice(k, Reworked: false, Rested: !isDulled, Unmasked: true));
        }

        if (film.Label.Missed != MissedRework.Strip && windows.All(window => window.To is not null))
        {
            ways.Add(new GapChoice(0, Reworked: true, Rested: true, Unmasked: false));
            if (isTaped)
                ways.Add(new GapChoice(0, Reworked: true, Rested: true, Unmasked: true));
        }

        return ways.ToImmutable();
    }
}
