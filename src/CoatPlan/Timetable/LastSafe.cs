using CoatPlan.Jobs;
using CoatPlan.Quantities;
using CoatPlan.Scheduling;
using Windows = CoatPlan.Climate.Windows;

namespace CoatPlan.Timetable;

/// <summary>The latest start of a coat that still keeps windows, light and dew where it was planned, and what comes after it.</summary>
/// <param name="Minute">The latest start, not before the planned one.</param>
/// <param name="Then">What a later start would meet.</param>
internal sealed record LastSafe(int Minute, string Then)
{
    /// <summary>The last safe start of a coat.</summary>
    /// <param name="coat">The coat.</param>
    /// <param name="at">When it was planned.</param>
    /// <param name="links">The links that lead to it, each with what it counts from and the window in use.</param>
    /// <param name="place">What the network was drawn from.</param>
    public static LastSafe Of(CoatTask coat, Placement at, IEnumerable<PlacedLink> links, Workplace place)
    {
        var work = at.End - at.Start;
        (int Minute, Func<string> Then)[] bounds =
        [
            .. links.Where(link => link.Window.Most is not null).Select(link => (
                link.Window.Most!.After(link.At),
                (Func<string>)(() => AfterWindow(coat, link, place)))),
            .. place.Hours.Openings
                .Where(opening => opening.Opens <= at.Start && at.Start < opening.Closes)
                .Select(opening => (opening.Closes - work, (Func<string>)(() => AfterSpan(work, opening, place)))),
        ];

        // The air is asked no further than it could be what ends the safe starts: with an open heater each minute of it is a film of its own that dries.
        var others = bounds.Select(bound => bound.Minute).DefaultIfEmpty(Clock.Horizon).Min();
        var (minute, then) = bounds.Prepend(Air(coat, at.Start, work, Math.Min(others, Clock.Horizon) + 1, place)).MinBy(bound => bound.Minute);
        return new LastSafe(Math.Max(minute, at.Start), then());
    }

    private static (int Minute, Func<string> Then) Air(CoatTask coat, int start, int work, int until, Workplace place)
    {
        var air = place.AirAround.Of(coat.Surfaces);
        var last = air.LastStart(coat, work, start, until);
        return (last, () => air.WhyNot(coat, work, last + 1, place.Clock, place.Format));
    }

    private static string AfterSpan(int work, Opening opening, Workplace place)
    {
        var next = place.Hours.NextFit(opening.Closes, work, false) is { } fit ? $"the next that holds it opens {WaitWords.Moment(place.Clock.At(fit.Start))}" : "no later one holds it";
        return $"The working span ends {WaitWords.Moment(place.Clock.At(opening.Closes))} and leaves no room for it; {next}.";
    }

    private static string AfterWindow(CoatTask coat, PlacedLink link, Workplace place)
    {
        if (link.Link.Tape)
            return $"The tape that went on with {WaitWords.Named(link.From)} would stay on longer than its limit of {Words(place.TapeLimitMinutes)}.";
        if (link.From.Coat is not { } film)
        {
            return link.From.Operation is null
                ? "The wait before it would last too long."
                : $"{WaitWords.Named(link.From)} would have to be done again: it holds {Words(link.Window.Most!.After(link.At) - link.At.End)}.";
        }

        var air = place.AirAround.Of(coat.Surfaces);
        var closes = link.Window.Most!.After(link.At);
        var over = GapDrawing.Over(film, coat);
        var later = Enumerable.Range(0, Windows.Of(film.Label, over).Length)
            .Select(window => (Opens: air.Opens(film, over, window, link.At.End), Closes: air.Closes(film, over, window, link.At.Start)))
            .Where(window => window.Opens > closes && window.Closes >= window.Opens && window.Opens < Clock.Horizon)
            .Select(window => (int?)window.Opens)
            .Min();
        if (later is { } next)
            return $"The label's window closes; the next opens {WaitWords.Moment(place.Clock.At(next))}.";

        var through = air.Reaches(film, FilmStage.Through, link.At.End);
        var dry = through < Clock.Horizon ? $" (not before {WaitWords.Moment(place.Clock.At(through))})" : "";
        return film.Label.Missed switch
        {
            MissedRework.Strip => "The label's window closes and no other opens: it asks to strip the film and begin again.",
            MissedRework.Wait => $"The label's window closes and no other opens: the next coat waits until the film is dry through{dry}.",
            _ => $"The label's window closes and no other opens: the film dries through{dry}, is scuffed and wiped, then the next coat goes on.",
        };
    }

    private static string Words(int minutes) => QuantityFormat.Duration(Duration.FromMinutes(minutes));
}
