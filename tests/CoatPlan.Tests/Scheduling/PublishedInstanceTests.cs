using System.Globalization;
using CoatPlan.Scheduling;

namespace CoatPlan.Tests.Scheduling;

/// <summary>Published instances with known optima; their source is in Data/instances/README.md.</summary>
public class PublishedInstanceTests
{
    private static string Folder => Path.Combine(AppContext.BaseDirectory, "Data", "instances");

    public static TheoryData<string, string> Optima
    {
        get
        {
            var optima = new TheoryData<string, string>();
            foreach (var row in File.ReadLines(Path.Combine(Folder, "optimum.csv")).Skip(1).Select(line => line.Split(',')))
            {
                optima.Add(row[0], row[1]);
            }

            return optima;
        }
    }

    [Theory]
    [MemberData(nameof(Optima))]
    public void A_published_instance_is_solved_to_its_published_optimum(string file, string optimum)
    {
        var network = Read(Path.Combine(Folder, file));

        var outcome = Scheduler.Schedule(network, new Effort(100, 4000));

        if (optimum == "unsat")
        {
            outcome.Verdict.ShouldBe(Verdict.Infeasible);
            return;
        }

        var schedule = outcome.Schedule.ShouldNotBeNull();
        MinuteByMinute.Violations(network, schedule).ShouldBeEmpty();
        schedule.Placements[^1].Start.ShouldBe(int.Parse(optimum, CultureInfo.InvariantCulture));
        outcome.LowerBound.ShouldBeLessThanOrEqualTo(schedule.Finish);
    }

    private static Network Read(string path)
    {
        var rows = File.ReadLines(path)
            .Where(line => !string.IsNullOrWhiteSpace(line))
            .Select(line => line.Replace('[', ' ').Replace(']', ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
            .ToArray();
        int At(int row, int column) => int.Parse(rows[row][column], CultureInfo.InvariantCulture);
        var (count, resources) = (At(0, 0) + 2, At(0, 1));

        var links = new List<Link>();
        var activities = new List<Activity>();
        var horizon = 1;
        for (var i = 0; i < count; i++)
        {
            var successors = At(1 + i, 2);
            var longest = 0;
            for (var s = 0; s < successors; s++)
            {
                var lag = At(1 + i, 3 + successors + s);
                longest = Math.Max(longest, lag);
                links.Add(Link.After(rows[1 + i][0], rows[1 + i][3 + s], Wait.FromStart(lag)));
            }

            activities.Add(new Activity
            {
                Id = rows[1 + count + i][0],
                Work = At(1 + count + i, 2),
                Demands = [.. Enumerable.Range(0, resources).Select(r => new Demand("r" + r, At(1 + count + i, 3 + r)))],
            });
            horizon += Math.Max(longest, activities[^1].Work);
        }

        return new Network
        {
            Activities = [.. activities],
            Resources = [.. Enumerable.Range(0, resources).Select(r => new Resource("r" + r, At(1 + (2 * count), r)))],
            Links = [.. links],
            Horizon = horizon,
        };
    }
}
