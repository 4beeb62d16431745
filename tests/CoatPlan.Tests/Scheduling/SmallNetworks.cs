using System.Globalization;
using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

/// <summary>Random networks of 4 to 14 activities on a short horizon, that an exact solver can finish.</summary>
internal static class SmallNetworks
{
    private const int Day = 60;
    private const int Horizon = 240;
    private const int Wet = 1;
    private const int Dust = 2;

    public static Network Make(int seed)
    {
        var draws = new Random(seed);
        var people = draws.Next(1, 3);
        var hours = draws.Next(3) == 0 ? null : OpenHours.Of(Enumerable.Range(0, Horizon / Day).SelectMany(d => new[]
        {
            new Opening((d * Day) + 5, (d * Day) + draws.Next(15, 28)),
            new Opening((d * Day) + 30, (d * Day) + draws.Next(40, 55)),
        }));
        var rule = draws.Next(3) == 0 ? (Func<int, int?>)(t => t % Day < 10 ? t - (t % Day) + 10 : t) : null;
        var activities = new List<Activity>();
        var links = new List<Link>();
        var holds = new List<Hold>();
        for (var part = 0; part < draws.Next(2, 5); part++)
        {
            var prep = "prep-" + part.ToString(CultureInfo.InvariantCulture);
            activities.Add(new Activity
            {
                Id = prep,
                Work = draws.Next(2, 20),
                Breakable = true,
                Hours = hours,
                Release = draws.Next(3) == 0 ? draws.Next(Day) : 0,
                Demands = [new Demand("people", draws.Next(1, people + 1))],
                Presences = [new Presence(Dust)],
                Avoids = [new Avoidance(Wet)],
            });
            var before = prep;
            var first = "";
            for (var coat = 0; coat < draws.Next(1, 4); coat++)
            {
                var id = string.Create(CultureInfo.InvariantCulture, $"coat-{part}-{coat}");
                first = first.Length == 0 ? id : first;
                var tail = draws.Next(3, 10);
                activities.Add(new Activity
                {
                    Id = id,
                    Work = draws.Next(1, 8),
                    Hours = hours,
                    NextStart = rule,
                    Demands = [new Demand("people", 1), new Demand("spots", 1)],
                    Presences = [new Presence(Wet, part % 2, end => Later(end, tail))],
                    Avoids = [new Avoidance(Dust), new Avoidance(Wet, part % 2)],
                });
                links.Add(coat == 0 ? Link.After(prep, id) : new Link(before, id, Recoat(draws)));
                before = id;
            }

            holds.Add(new Hold("rack", 1, first, before, end => end + 12));
        }

        return new Network
        {
            Activities = [.. activities],
            Resources = [new Resource("people", people), new Resource("spots", 1), new Resource("rack", draws.Next(1, 3))],
            Links = [.. links],
            Holds = [.. holds],
            Horizon = Horizon,
        };
    }

    // Five minutes longer late in the day, and never earlier for a later end.
    private static int Later(int end, int tail) => end + tail + (end % Day > 40 ? Math.Min(5, Day - (end % Day)) : 0);

    private static ImmutableArray<Window> Recoat(Random draws)
    {
        var within = new Window(Wait.FromEnd(draws.Next(2, 8)), Wait.FromStart(draws.Next(10, 22)));
        return draws.Next(3) switch
        {
            0 => [new Window(Wait.FromEnd(5))],
            1 => [within, new Window(Wait.FromEnd(end => end + 50))],
            _ => [within],
        };
    }
}
