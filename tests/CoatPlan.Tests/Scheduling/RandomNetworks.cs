using System.Globalization;
using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

/// <summary>Random networks that use everything the room knows: days of work, start rules, tails that depend on the night, holds, either/or windows.</summary>
internal static class RandomNetworks
{
    public const int Horizon = 12_000;

    private const int Day = 1440;

    /// <summary>Parts that are prepared, coated several times and handled, in one air space.</summary>
    public static Network Make(int seed)
    {
        var draws = new Random(seed);
        var hours = Hours(draws);
        var activities = new List<Activity>();
        var links = new List<Link>();
        var holds = new List<Hold>();
        var people = draws.Next(1, 4);
        var spots = draws.Next(1, 3);
        var rack = draws.Next(1, 4);
        var rule = draws.Next(3) == 0 ? WarmHours(draws) : null;

        var parts = draws.Next(1, 6);
        for (var part = 0; part < parts; part++)
        {
            var product = draws.Next(2);
            var prep = Name("prep", part);
            var work = draws.Next(10, 300);
            activities.Add(new Activity
            {
                Id = prep,
                Work = work,
                Breakable = work > 120 || draws.Next(4) > 0,
                Hours = hours,
                Release = draws.Next(3) == 0 ? draws.Next(Day) : 0,
                Demands = [new Demand("people", draws.Next(1, people + 1))],
                Presences = [new Presence(Dust)],
                Avoids = [new Avoidance(Wet)],
            });

            var before = prep;
            var coats = draws.Next(1, 4);
            var first = Name("coat", part, 0);
            for (var coat = 0; coat < coats; coat++)
            {
                var id = Name("coat", part, coat);
                var wet = draws.Next(10, 60);
                activities.Add(new Activity
                {
                    Id = id,
                    Work = draws.Next(3, 30),
                    Hours = hours,
                    NextStart = rule,
                    Demands = [new Demand("people", 1), new Demand("spots", 1)],
                    Presences = [new Presence(Wet, product, end => SlowAtNight(end, wet)), new Presence(Vapour, 0, end => end + 30)],
                    Avoids = [new Avoidance(Dust), new Avoidance(Wet, product)],
                });
                links.Add(coat == 0 ? Link.After(before, id) : new Link(before, id, Recoat(draws)));
                before = id;
            }

            var handle = draws.Next(30, 200);
            holds.Add(new Hold("rack", 1, first, before, end => SlowAtNight(end, handle)));
            activities.Add(new Activity { Id = Name("ready", part) });
            links.Add(Link.After(before, Name("ready", part), Wait.FromEnd(end => SlowAtNight(end, handle))));
            if (draws.Next(3) == 0)
            {
                var hot = Name("hot", part);
                activities.Add(new Activity { Id = hot, Work = 20, Hours = hours, Demands = [new Demand("people", 1)], Avoids = [new Avoidance(Vapour)] });
                links.Add(Link.After(prep, hot));
            }
        }

        return new Network
        {
            Activities = [.. activities.OrderBy(_ => draws.Next())],
            Resources = [new Resource("people", people), new Resource("spots", spots), new Resource("rack", rack)],
            Links = [.. links],
            Holds = [.. holds],
            Horizon = Horizon,
        };
    }

    private const int Wet = 1;
    private const int Dust = 2;
    private const int Vapour = 3;

    private static ImmutableArray<Window> Recoat(Random draws)
    {
        var least = draws.Next(5, 30);
        var within = new Window(Wait.FromEnd(end => SlowAtNight(end, least)), Wait.FromStart(draws.Next(60, 120)));
        return draws.Next(3) switch
        {
            0 => [new Window(Wait.FromEnd(least))],
            1 => [within, new Window(Wait.FromEnd(Day)) { AddedWork = draws.Next(0, 15) }],
            _ => [within],
        };
    }

    private static OpenHours Hours(Random draws)
    {
        var openings = new List<Opening>();
        for (var day = 0; day < Horizon / Day; day++)
        {
            if (draws.Next(4) == 0)
            {
                continue;
            }

            var opens = (day * Day) + (60 * draws.Next(7, 14));
            openings.Add(new Opening(opens, opens + draws.Next(50, 240)));
            opens += draws.Next(240, 300);
            openings.Add(new Opening(opens, opens + draws.Next(50, 240)));
        }

        return OpenHours.Of(openings);
    }

    private static Func<int, int?> WarmHours(Random draws)
    {
        var from = 60 * draws.Next(8, 12);
        var until = 60 * draws.Next(16, 20);
        return t => t % Day < from ? t - (t % Day) + from : t % Day <= until ? t : t - (t % Day) + Day + from;
    }

    // Half speed between 20:00 and 6:00; never decreasing in the end, as drying is.
    private static int SlowAtNight(int end, int minutes)
    {
        var left = 2 * minutes;
        var t = end;
        for (; left > 0; t++)
        {
            var minuteOfDay = t % Day;
            left -= minuteOfDay is >= 360 and < 1200 ? 2 : 1;
        }

        return t;
    }

    private static string Name(string sort, params int[] numbers) =>
        sort + string.Concat(numbers.Select(n => "-" + n.ToString(CultureInfo.InvariantCulture)));
}
