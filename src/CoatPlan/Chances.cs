using CoatPlan.Jobs;
using CoatPlan.Outlook;
using CoatPlan.Scheduling;

namespace CoatPlan;

/// <summary>How likely a job is done in time.</summary>
/// <remarks>
/// Each draw carries the plan out under its own hands, drying and weather, in the plan's order: a coat whose air is not fit waits, a window that was missed
/// becomes the next one or its rework. The draws are the same on every machine and with any number of cores.
/// </remarks>
public static class Chances
{
    private const double Half = 0.5;
    private const double NineOfTen = 0.9;

    /// <summary>The chance of a job.</summary>
    /// <param name="ready">The job.</param>
    /// <param name="asked">How many draws, and of what.</param>
    /// <param name="progress">Takes the share of the draws that are done, 0 to 1; from several threads; null for none.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>Null: the whole of the job could not be placed, and its plan says why.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than 1 or more than a million draws.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static Chance? Of(ReadyJob ready, ChanceAsked asked, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(ready);
        ArgumentNullException.ThrowIfNull(asked);
        if (asked.Draws is < 1 or > ChanceAsked.MostDraws || asked.BuyDraws is < 0 or > ChanceAsked.MostDraws)
            throw new ArgumentOutOfRangeException(nameof(asked), asked.Draws, $"Draws must be 1 to {ChanceAsked.MostDraws}, those of what could be bought 0 to as many.");

        var arranged = Planner.Arrange(ready, asked.Depth, null, cancel);
        if (arranged.Settled.Arranged.Stopped is not null || arranged.Settled.Arranged.OpenSchedule is null)
            return null;

        var plan = Planner.Work(arranged, cancel).Plan;
        ImmutableArray<(string What, Job Job)> tried = asked.BuyDraws == 0 ? [] : Bought(ready);
        var report = Counted(progress, asked.Draws + tried.Length * asked.BuyDraws);
        var drawn = ChanceDraws.Of(ModelOf(arranged, asked), asked.Draws, withCosts: true, report, asked.Threads, cancel);
        var finishes = Sorted(drawn.Finishes);
        // Each draw is the same however many there are: what is bought is held against as many draws without it.
        var alike = Sorted(drawn.Finishes[..Math.Min(asked.BuyDraws, asked.Draws)]);
        return new Chance
        {
            Draws = asked.Draws,
            Planned = plan.Finish!.Value,
            Meets = Meets(finishes, ready.Job),
            Finish50 = FinishOf(finishes, Half, ready.Job),
            Finish90 = FinishOf(finishes, NineOfTen, ready.Job),
            Cans = [.. plan.Supplies.SelectMany(supply => supply.Covered.Select(covered => new ChanceCans(supply.Product, covered.Cans, covered.Share)))],
            Costly = drawn.Costs(),
            Unbought = tried.IsEmpty ? null : new ChanceBuy("nothing more", Meets(alike, ready.Job), FinishOf(alike, Half, ready.Job)),
            Buys = [.. tried.Select(bought => Buy(bought.What, ready.With(bought.Job), arranged, asked, report, cancel))],
        };
    }

    private static ChanceModel ModelOf(ArrangedJob arranged, ChanceAsked asked)
    {
        var catalogue = arranged.Ready.Trade.Catalogue;
        return new ChanceModel(arranged.Settled, catalogue, arranged.Ready.Forecast, asked.Spreads ?? ChanceSpreads.Of(catalogue.Figures));
    }

    // What is bought may be used as its own best plan would, or to carry out the plan there was: whoever buys it takes the better of the two.
    private static ChanceBuy Buy(string what, ReadyJob ready, ArrangedJob before, ChanceAsked asked, Action<int>? report, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        var arranged = Planner.Arrange(ready, asked.Depth, null, cancel);
        if (arranged.Settled.Arranged.OpenSchedule is null)
            return new ChanceBuy(what, ready.Job.FinishBy is null ? null : 0, null);

        var anew = Drawn(arranged, report);
        var asBefore = Drawn(arranged with { Settled = arranged.Settled with { Arranged = before.Settled.Arranged } }, null);
        var better = (Meets(asBefore, ready.Job) ?? 0, -At(asBefore, Half)).CompareTo((Meets(anew, ready.Job) ?? 0, -At(anew, Half))) > 0 ? asBefore : anew;
        return new ChanceBuy(what, Meets(better, ready.Job), FinishOf(better, Half, ready.Job));

        int[] Drawn(ArrangedJob job, Action<int>? count) =>
            Sorted(ChanceDraws.Of(ModelOf(job, asked), asked.BuyDraws, withCosts: false, count, asked.Threads, cancel).Finishes);
    }

    private static int[] Sorted(ReadOnlySpan<int> finishes)
    {
        var sorted = finishes.ToArray();
        Array.Sort(sorted);
        return sorted;
    }

    private static int At(int[] sorted, double share) => sorted[Math.Max(0, (int)Math.Ceiling(share * sorted.Length) - 1)];

    private static ImmutableArray<(string What, Job Job)> Bought(ReadyJob ready)
    {
        var job = ready.Job;
        var format = job.UnitFormat;
        var warm = ready.Trade.Catalogue.Figures.Temperature("heater-tried");
        var bought = ImmutableArray.CreateBuilder<(string What, Job Job)>();
        bought.Add(("one more hour of work each day", job with { Crew = job.Crew with { Hours = [.. job.Crew.Hours.Select(AnHourMore)] } }));
        bought.Add(("one more helper", job with { Crew = job.Crew with { People = job.Crew.People + 1 } }));
        if (!job.Place.Outdoors && !(job.Place is { Heater: HeaterKind.Sealed, Hold: not null }))
        {
            var hold = job.Place.Hold is { } now && now > warm ? now : warm;
            bought.Add(($"a sealed heater that holds {format.Temperature(hold)}", job with { Place = job.Place with { Hold = hold, Heater = HeaterKind.Sealed } }));
        }

        return bought.ToImmutable();
    }

    // The last span of a day ends later, where that leaves the day a night.
    private static HoursEntry AnHourMore(HoursEntry entry)
    {
        if (entry.Spans.IsEmpty)
            return entry;

        var last = entry.Spans[^1];
        var (start, end) = last.On(new LocalDate(2000, 1, 1));
        return Period.Between(start, end, PeriodUnits.Hours).Hours >= NodaConstants.HoursPerDay - 1
            ? entry
            : entry with { Spans = entry.Spans.SetItem(entry.Spans.Length - 1, last with { End = last.End.PlusHours(1) }) };
    }

    private static double? Meets(int[] sorted, Job job) => job.FinishBy is { } asked
        ? (double)sorted.Count(finish => finish != Repair.Never && job.Start.PlusMinutes(finish) <= asked) / sorted.Length
        : null;

    private static LocalDateTime? FinishOf(int[] sorted, double share, Job job) =>
        At(sorted, share) is var finish && finish != Repair.Never ? job.Start.PlusMinutes(finish) : null;

    private static Action<int>? Counted(IProgress<double>? progress, int of)
    {
        if (progress is null)
            return null;

        var done = 0;
        return more => progress.Report((double)Interlocked.Add(ref done, more) / of);
    }
}
