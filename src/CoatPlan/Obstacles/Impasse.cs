using CoatPlan.Presets;
using CoatPlan.Timetable;

namespace CoatPlan.Obstacles;

/// <summary>Why a job cannot be planned as asked, and the nearest ways out.</summary>
/// <param name="Obstacles">Without any one of them there is a plan; empty where none was found.</param>
/// <param name="WaysOut">Changes that were tried and do.</param>
internal sealed record Impasse(ImmutableArray<Obstacle> Obstacles, ImmutableArray<WayOut> WaysOut)
{
    // Trials of a job so small that each takes milliseconds, and how they become fewer with the coats to be placed.
    private const int MostTrials = 50;
    private const int FewestTrials = 6;
    private const int CoatTrials = 2000;

    /// <summary>What stands in the way of a job and what gets it round.</summary>
    /// <param name="ask">What was asked.</param>
    /// <param name="settled">The best that was found.</param>
    /// <param name="found">The same as a trial.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="plan">Plans an ask.</param>
    public static Impasse Of(Ask ask, Settled settled, Trial found, Catalogue catalogue, Func<Ask, Trial> plan)
    {
        var most = MostFor(settled.Arranged.Batches.Sum(batch => batch.Coats.Length));
        var trials = new Trials(ask, plan, most);
        var sets = ObstacleSearch.Find(ObstacleRules.Of(ask), trials);
        var words = new ObstacleWords(ask, settled, found.Finish);
        ImmutableArray<Obstacle> obstacles = [.. sets.Select(set => (set, finish: trials.Without(set)!.Value)).Select(pair => new Obstacle(pair.set, words.Of(pair.set, pair.finish), pair.finish))];
        return new Impasse(obstacles, CoatPlan.Obstacles.WaysOut.Of(ask, found, [.. sets.SelectMany(set => set).Distinct()], catalogue, new Trials(ask, plan, most)));
    }

    private static int MostFor(int coats) => Math.Clamp(CoatTrials / Math.Max(1, coats), FewestTrials, MostTrials);
}
