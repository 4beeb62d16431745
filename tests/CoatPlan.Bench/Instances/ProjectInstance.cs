using System.Globalization;
using CoatPlan.Scheduling;

namespace CoatPlan.Bench.Instances;

/// <summary>A published project-scheduling instance with least and most time lags (RCPSP/max), as a network.</summary>
/// <remarks>
/// The format of ProGen/max (.sch): "n R 0 0"; then for activities 0 to n+1 "i 1 k j1 … jk [d1] … [dk]", where j starts at least d after i and d may be
/// negative; then "i 1 duration r1 … rR"; then the capacities.
/// </remarks>
public static class ProjectInstance
{
    public static Network Read(string path)
    {
        var lines = File.ReadLines(path)
            .Select(line => line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
            .Where(words => words.Length > 0)
            .Select(words => words.Select(Number).ToArray())
            .ToArray();
        var count = lines[0][0] + 2;
        var resources = lines[0][1];

        var links = new List<Link>();
        var longestLag = new int[count];
        foreach (var line in lines.Skip(1).Take(count))
        {
            var successors = line[2];
            for (var s = 0; s < successors; s++)
            {
                var lag = line[3 + successors + s];
                longestLag[line[0]] = Math.Max(longestLag[line[0]], lag);
                links.Add(Link.After(Name(line[0]), Name(line[3 + s]), Wait.FromStart(lag)));
            }
        }

        var activities = new Activity[count];
        var horizon = 1;
        foreach (var line in lines.Skip(1 + count).Take(count))
        {
            // If there is a schedule, there is one in which each activity delays the rest by its duration or its longest lag.
            horizon += Math.Max(line[2], longestLag[line[0]]);
            activities[line[0]] = new Activity
            {
                Id = Name(line[0]),
                Work = line[2],
                Demands = [.. Enumerable.Range(0, resources).Where(r => line[3 + r] > 0).Select(r => new Demand(Name(r), line[3 + r]))],
            };
        }

        return new Network
        {
            Activities = [.. activities],
            Resources = [.. lines[1 + (2 * count)].Take(resources).Select((capacity, r) => new Resource(Name(r), capacity))],
            Links = [.. links],
            Horizon = horizon,
        };
    }

    private static int Number(string word) => int.Parse(word.Trim('[', ']'), CultureInfo.InvariantCulture);

    private static string Name(int number) => number.ToString(CultureInfo.InvariantCulture);
}
