using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>How a job was arranged before a change: which surfaces went together, and when each step began. What is planned at once after the change begins from there.</summary>
/// <remarks>"Baseline" as in W. Herroelen, R. Leus, "Project scheduling under uncertainty", European Journal of Operational Research 165 (2005).</remarks>
internal sealed class Baseline
{
    // A batch may be cut and named otherwise after the change, so that its steps are known by what is done to which surface.
    private readonly Dictionary<(string What, string Surface), BaselineStep> known = [];
    private readonly Dictionary<(string Surface, int? Station), string> batches = [];
    private readonly LocalDateTime finish = LocalDateTime.MinIsoValue;

    /// <summary>The baseline that steps are.</summary>
    /// <param name="steps">The steps, by start.</param>
    public Baseline(IEnumerable<BaselineStep> steps)
    {
        foreach (var step in steps)
        {
            var what = What(step.Id, step.Batch);
            finish = LocalDateTime.Max(finish, step.End);
            foreach (var surface in step.Surfaces.DefaultIfEmpty(""))
            {
                known.TryAdd((what, surface), step);
                if (step.Batch is not null)
                    batches.TryAdd((surface, step.Station), step.Batch);
            }
        }
    }

    /// <summary>Batches cut where their surfaces were in parts of theirs before.</summary>
    /// <param name="first">The batches as they are best begun with.</param>
    /// <param name="part">From a batch, a name and some of its surfaces to a batch of these.</param>
    public ImmutableArray<Batch> Divided(ImmutableArray<Batch> first, Func<Batch, string, ImmutableArray<string>, Batch> part) =>
        [.. first.SelectMany(batch => Divided(batch, part))];

    /// <summary>What was before the change as a schedule of the network after it.</summary>
    /// <param name="drawn">The network.</param>
    /// <param name="clock">The clock of its minutes.</param>
    /// <param name="later">Minutes by which it may finish later than before, besides those of the work that the change adds.</param>
    public EarlierSchedule In(WorkNetwork drawn, Clock clock, int later)
    {
        var starts = ImmutableArray.CreateBuilder<int?>(drawn.Nodes.Length);
        var added = 0.0;
        foreach (var node in drawn.Nodes)
        {
            var before = StepOf(node);
            starts.Add(before is null ? null : clock.MinuteAtOrAfter(before.Start));
            added += before is null ? 0 : Math.Max(0, node.Activity.Work - before.HandsMinutes);
        }

        // What takes longer by so much is not expected to be done by the same time.
        return new EarlierSchedule(starts.MoveToImmutable(), clock.MinuteAtOrAfter(finish) + later + (int)added);
    }

    private IEnumerable<Batch> Divided(Batch batch, Func<Batch, string, ImmutableArray<string>, Batch> part)
    {
        var before = batch.Surfaces.Select(surface => PartOf(batch, surface)).ToArray();
        // What was not there before goes with what is next to it.
        for (var i = 1; i < before.Length; i++)
            before[i] ??= before[i - 1];
        for (var i = before.Length - 2; i >= 0; i--)
            before[i] ??= before[i + 1];

        var parts = batch.Surfaces.Zip(before).GroupBy(pair => pair.Second, pair => pair.First).ToArray();
        return parts.Length < 2 ? [batch] : parts.Select(surfaces => part(batch, surfaces.Key!, [.. surfaces]));
    }

    // A part carries the name of the whole and a mark of its own.
    private string? PartOf(Batch batch, string surface) =>
        batches.TryGetValue((surface, batch.Station), out var name) && name.StartsWith(batch.Name + ".", StringComparison.Ordinal) ? name : null;

    private BaselineStep? StepOf(WorkNode node)
    {
        if (node.IsMilestone)
            return null;

        var surfaces = node.Operation?.Surfaces ?? node.Coat!.Surfaces;
        return known.GetValueOrDefault((What(node.Id, node.Batch?.Name), surfaces.IsEmpty ? "" : surfaces[0]));
    }

    private static string What(string id, string? batch) => batch is null ? id : id.Replace("/" + batch, "", StringComparison.Ordinal);
}
