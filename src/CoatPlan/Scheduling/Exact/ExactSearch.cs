namespace CoatPlan.Scheduling.Exact;

/// <summary>
/// Tries decisions, learns from contradictions, and asks for an earlier finish each time it finds a schedule, until there is none or as many
/// contradictions were met as it may meet.
/// </summary>
internal sealed class ExactSearch
{
    private const int RestartUnit = 64;
    private const int KeptClauses = 4000;

    private readonly ExactModel model;
    private readonly Reasoner reasoner;
    private readonly Guide guide;
    private readonly Learning learning;
    private readonly Trail trail;
    private readonly int starts;

    public ExactSearch(ExactModel model)
    {
        this.model = model;
        starts = model.Finish;
        reasoner = model.NewReasoner();
        trail = reasoner.Trail;
        guide = new Guide(trail, starts, model.Variables);
        learning = new Learning(reasoner, 2 * model.Variables);
    }

    private enum Resolution
    {
        Learnt,
        NothingLeft,
        Unsound,
    }

    /// <summary>Whether the search came to an end: what it found finishes earliest, or there is nothing to find.</summary>
    public bool IsComplete { get; private set; }

    /// <summary>The starts of the best schedule found; null when none was.</summary>
    public int[]? Best { get; private set; }

    /// <summary>How much was looked at so far.</summary>
    public long Steps => reasoner.Steps;

    /// <summary>A minute before which nothing finishes.</summary>
    public int LowerBound { get; private set; }

    /// <summary>Whether explanations held: false when a caller's function decreased, and nothing here may be relied on.</summary>
    public bool IsSound { get; private set; } = true;

    /// <summary>Searches for schedules that finish before a minute.</summary>
    /// <param name="before">Only earlier finishes are looked for.</param>
    /// <param name="hint">A schedule to stay near to; null for none.</param>
    /// <param name="contradictions">How many contradictions may be met.</param>
    /// <param name="steps">How many of the reasoner's steps may be taken.</param>
    /// <param name="cancel">Ends the search.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public void Run(int before, Schedule? hint, int contradictions, long steps, CancellationToken cancel = default)
    {
        if (hint is not null)
        {
            for (var i = 0; i < starts; i++)
            {
                guide.Remember(i, hint.Placements[i].Start);
            }
        }

        if (!reasoner.Begin() || !FinishBy(before - 1))
        {
            IsComplete = true;
            return;
        }

        var given = reasoner.Clauses.Count;
        var full = given + KeptClauses;
        var restart = 1;
        var left = Luby(restart) * RestartUnit;
        LowerBound = trail.Least(model.Finish);
        while (contradictions > 0 && reasoner.Steps < steps)
        {
            cancel.ThrowIfCancellationRequested();
            if (reasoner.Conclude())
            {
                if (left <= 0 && trail.Level > 0)
                {
                    left = Luby(++restart) * RestartUnit;
                    reasoner.BackTo(0, guide.Shrunk);
                    LowerBound = trail.Least(model.Finish);
                    if (reasoner.Clauses.Count > full)
                    {
                        reasoner.Clauses.Thin(given);
                        full = reasoner.Clauses.Count + (KeptClauses / 2);
                    }
                }
                else if (guide.Next() is { } decision)
                {
                    trail.Decide();
                    reasoner.Set(decision, Cause.Decision);
                }
                else if (!Found())
                {
                    IsComplete = true;
                    return;
                }

                continue;
            }

            contradictions--;
            left--;
            switch (Resolve())
            {
                case Resolution.Learnt:
                    break;
                case Resolution.NothingLeft:
                    IsComplete = true;
                    return;
                default:
                    IsSound = false;
                    return;
            }
        }
    }

    private bool FinishBy(int minute) => reasoner.Set(Bound.AtMost(model.Finish, minute), Cause.Decision) && reasoner.Conclude();

    private bool Found()
    {
        guide.Remember();
        Best = [.. Enumerable.Range(0, starts).Select(trail.Least)];
        var finish = trail.Least(model.Finish);
        reasoner.BackTo(0, guide.Shrunk);
        LowerBound = Math.Max(LowerBound, trail.Least(model.Finish));
        return FinishBy(finish - 1);
    }

    private Resolution Resolve()
    {
        // A contradiction may be older than the newest decision.
        var level = 0;
        foreach (var bound in reasoner.Conflict)
        {
            var position = trail.PositionOf(bound);
            level = Math.Max(level, position < 0 ? 0 : trail.LevelOf(position));
        }

        if (level == 0)
        {
            return Resolution.NothingLeft;
        }

        reasoner.BackTo(level, guide.Shrunk);
        if (!learning.Learn())
        {
            return Resolution.Unsound;
        }

        reasoner.BackTo(learning.BackLevel, guide.Shrunk);
        var bounds = learning.Bounds;
        foreach (var bound in bounds)
        {
            guide.Note(bound);
        }

        guide.Age();
        if (bounds.Count == 1)
        {
            return reasoner.Set(bounds[0], Cause.Decision) ? Resolution.Learnt : Resolution.NothingLeft;
        }

        var clause = reasoner.Clauses.Add(new Clause([.. bounds], learning.Levels));
        reasoner.Set(bounds[0], new Cause(CauseKind.Clause, clause));
        return Resolution.Learnt;
    }

    // 1, 1, 2, 1, 1, 2, 4, … Source: M. Luby, A. Sinclair, D. Zuckerman, "Optimal speedup of Las Vegas algorithms", Inf. Proc. Letters 47 (1993).
    private static int Luby(int index)
    {
        var length = 1;
        while (length < index + 1)
        {
            length *= 2;
        }

        while (length - 1 != index)
        {
            length /= 2;
            index = index >= length ? index - length + 1 : index;
        }

        return length / 2;
    }
}
