namespace CoatPlan.Obstacles;

/// <summary>Plans an ask without some of its rules; each set of rules once, and no more sets than the size of the job leaves time for.</summary>
internal sealed class Trials
{
    private readonly Ask ask;
    private readonly Func<Ask, Trial> plan;
    private readonly Dictionary<string, LocalDateTime?> known = new(StringComparer.Ordinal);
    private int left;

    /// <summary>Trials of an ask.</summary>
    /// <param name="ask">What was asked.</param>
    /// <param name="plan">Plans an ask.</param>
    /// <param name="most">How many may be planned.</param>
    public Trials(Ask ask, Func<Ask, Trial> plan, int most) => (this.ask, this.plan, left) = (ask, plan, most);

    /// <summary>The finish of a plan without some rules that meets all the others; null where none was found.</summary>
    public LocalDateTime? Without(IEnumerable<ObstacleRule> rules)
    {
        var leftOut = rules.ToArray();
        var key = string.Join(' ', leftOut.Select(rule => $"{rule.Code}:{rule.Product}").Order(StringComparer.Ordinal));
        if (known.TryGetValue(key, out var finish))
            return finish;

        finish = Of(leftOut.Aggregate(ask, (given, rule) => rule.LeftOut(given)))?.Finish;
        known.Add(key, finish);
        return finish;
    }

    /// <summary>The trial of an ask of its own; null where it cannot be met, and when no more may be planned.</summary>
    public Trial? Of(Ask changed)
    {
        if (left == 0)
            return null;

        left--;
        var trial = plan(changed);
        return trial.Finish is { } finish && !(finish > changed.Job.FinishBy) ? trial : null;
    }
}
