using CoatPlan.Plans;
using Google.OrTools.Sat;

namespace CoatPlan.Tests.Properties;

/// <summary>
/// The least finish of a steady job by an exact solver. The model is written from the rules of the job, not from what the planner makes of them; of the plan it takes only
/// which steps there are, how many minutes of hands each takes, and which parts are worked on together.
/// </summary>
internal sealed class SteadyOptimum
{
    private const int Day = 1440;
    private const int WipeHolds = 60;
    private const int FlashAt70F = 10;
    private const int DustedFrom = 240;
    private static readonly ImmutableArray<string> s_chain = ["strip-down", "solvent-clean", "scuff", "blow-off", "final-wipe", "tack"];
    private static readonly ImmutableArray<string> s_unbroken = ["final-wipe", "tack", "coat"];

    private readonly SteadyJob job;
    private readonly Plan plan;
    private readonly int horizon;
    private readonly CpModel model = new();
    private readonly ImmutableArray<(int Opens, int Closes)> openings;
    private readonly Dictionary<string, Work> works = new(StringComparer.Ordinal);
    private readonly List<(Work Work, ILiteral? Done)> handsOn = [];

    /// <summary>A model of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="plan">Its plan; its finish is the latest that is asked about.</param>
    public SteadyOptimum(SteadyJob job, Plan plan)
    {
        this.job = job;
        this.plan = plan;
        horizon = Minute(plan.Finish!.Value);
        openings =
        [
            .. plan.OpenHours.Select(span => (Opens: Math.Max(0, Minute(span.From)), Closes: Math.Min(horizon, Minute(span.To)))).Where(span => span.Opens < span.Closes),
        ];
    }

    /// <summary>Least finish, minutes from the job's start; null where the solver does not settle it.</summary>
    public int? Solve()
    {
        foreach (var step in plan.Steps.Where(step => s_chain.Contains(step.Kind) || step.Kind is "photograph" or "disconnect" or "coat" or "refit" or "recheck" or "put-away"))
        {
            // What takes dust off a film that rested is put in by the gap that rests.
            if (step.Kind != "tack" || IsFirstTack(step))
                works[step.Id] = Hands(step, null);
        }

        var batches = plan.Steps.Where(step => step.Kind == "coat").Select(step => step.Batch!).Distinct().Order(StringComparer.Ordinal).ToArray();
        Before(works["disconnect"], works["photograph"]);
        foreach (string batch in batches)
            Chain(batch);

        AfterEvery("solvent-clean", "strip-down");
        AfterEvery("final-wipe", "scuff");
        AfterEvery("final-wipe", "blow-off");
        Before(works["put-away"], works["recheck"]);
        foreach (var refit in Of("refit"))
            Before(works["recheck"], refit);

        OtherColours();
        Shared();
        var finish = works["put-away"].End;
        model.Minimize(finish);
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1 max_deterministic_time:15" };
        return solver.Solve(model) == CpSolverStatus.Optimal ? (int)solver.Value(finish) : null;
    }

    private void Chain(string batch)
    {
        var before = works["disconnect"];
        foreach (string word in s_chain)
        {
            var next = works[$"{word}/{batch}"];
            // The wipes' solvent leaves twice as slowly for 10 °C less.
            bool flashes = word is "scuff" or "tack";
            model.Add(next.Start >= before.End + (flashes ? (int)Math.Ceiling(FlashAt70F * job.Slowness - 1e-6) : 0));
            before = next;
        }

        var coats = plan.Steps.Where(step => step.Kind == "coat" && step.Batch == batch).OrderBy(step => (step.Layer, step.Coat)).ToArray();
        Before(works[coats[0].Id], before);
        foreach (string wipe in (string[])["final-wipe", "tack"])
            model.Add(works[coats[0].Id].Start <= works[$"{wipe}/{batch}"].End + WipeHolds);
        for (int i = 1; i < coats.Length; i++)
            Gap(coats[i - 1], coats[i], batch);

        // A slow film may lie under a quick one.
        foreach (var last in coats.GroupBy(step => step.Layer).Select(layer => layer.Last()))
            model.Add(works[$"refit/{batch}"].Start >= works[last.Id].End + Slow(LabelOf(last).Handle));
    }

    // One of the label's windows; a film that rested for half a working day is dusted off within the hour before its next coat.
    private void Gap(PlanStep earlier, PlanStep later, string batch)
    {
        var (film, next, label) = (works[earlier.Id], works[later.Id], LabelOf(earlier));
        var used = label.Windows.Select(_ => model.NewBoolVar("window")).ToArray();
        model.AddExactlyOne(used);
        foreach (var (window, choice) in label.Windows.Zip(used))
        {
            model.Add(next.Start >= film.End + Slow(window.Open)).OnlyEnforceIf(choice);
            if (window.Close is { } close)
                model.Add(next.Start <= film.Start + close).OnlyEnforceIf(choice);
        }

        var rested = model.NewBoolVar("rested");
        model.Add(next.Start <= film.End + DustedFrom - 1).OnlyEnforceIf(rested.Not());
        var dusting = Hands(plan.Steps.Single(step => step.Id == $"tack/{batch}"), rested);
        model.Add(dusting.Start >= film.End + Slow(label.Touch)).OnlyEnforceIf(rested);
        model.Add(next.Start >= dusting.End).OnlyEnforceIf(rested);
        model.Add(next.Start <= dusting.End + WipeHolds).OnlyEnforceIf(rested);
    }

    // Nothing is sprayed in another product while a film is not dust-free; dust-free is touch where the label does not say.
    private void OtherColours()
    {
        var coats = plan.Steps.Where(step => step.Kind == "coat").ToArray();
        foreach (var (one, other) in coats.SelectMany((one, i) => coats.Skip(i + 1).Select(other => (one, other))).Where(pair => pair.one.Product != pair.other.Product))
        {
            var first = model.NewBoolVar("first");
            model.Add(works[other.Id].Start >= works[one.Id].End + Slow(LabelOf(one).Touch)).OnlyEnforceIf(first);
            model.Add(works[one.Id].Start >= works[other.Id].End + Slow(LabelOf(other).Touch)).OnlyEnforceIf(first.Not());
        }
    }

    private void Shared()
    {
        var people = model.AddCumulative(job.People);
        foreach (var (work, done) in handsOn)
            people.AddDemand(Interval(work.Start, work.End, done), 1);

        var spots = model.AddCumulative(job.Spots);
        foreach (var coat in Of("coat"))
            spots.AddDemand(Interval(coat.Start, coat.End, null), 1);

        if (job.Rack is not { } rack)
            return;

        var places = model.AddCumulative(rack);
        foreach (var batch in plan.Steps.Where(step => step.Kind == "coat").GroupBy(step => step.Batch))
        {
            var coats = batch.OrderBy(step => (step.Layer, step.Coat)).ToArray();
            var wetUntil = works[coats[^1].Id].End + Slow(LabelOf(coats[^1]).Handle);
            int pieces = coats[0].Surfaces.Sum(id => plan.Surfaces.Single(surface => surface.Id == id).Count);
            places.AddDemand(Interval(works[coats[0].Id].Start, wetUntil, null), pieces);
        }
    }

    // Work begins and ends in an opening, in the same one unless it may rest at an opening's end and go on first thing in the next.
    private Work Hands(PlanStep step, BoolVar? done)
    {
        int minutes = (int)step.HandsMin;
        var (start, end) = (model.NewIntVar(0, horizon, step.Id), model.NewIntVar(0, horizon, step.Id));
        var begins = openings.Select(_ => model.NewBoolVar("begins")).ToArray();
        var ends = openings.Select(_ => model.NewBoolVar("ends")).ToArray();
        model.AddExactlyOne(begins);
        model.AddExactlyOne(ends);
        int worked = 0;
        var (from, until) = (model.NewIntVar(0, horizon, "worked"), model.NewIntVar(0, horizon, "worked"));
        for (int k = 0; k < openings.Length; k++)
        {
            var (opens, closes) = openings[k];
            model.Add(start >= opens).OnlyEnforceIf(begins[k]);
            model.Add(start <= closes - 1).OnlyEnforceIf(begins[k]);
            model.Add(from == start - (opens - worked)).OnlyEnforceIf(begins[k]);
            model.Add(end >= opens + 1).OnlyEnforceIf(ends[k]);
            model.Add(end <= closes).OnlyEnforceIf(ends[k]);
            model.Add(until == end - (opens - worked)).OnlyEnforceIf(ends[k]);
            if (s_unbroken.Contains(step.Kind))
                model.Add(begins[k] == ends[k]);
            worked += closes - opens;
        }

        model.Add(until == from + minutes);
        var work = new Work(start, end);
        handsOn.Add((work, done));
        return work;
    }

    private IntervalVar Interval(IntVar start, LinearExpr end, ILiteral? done)
    {
        var size = model.NewIntVar(0, 2 * horizon + 60 * Day, "size");
        return done is null ? model.NewIntervalVar(start, size, end, "interval") : model.NewOptionalIntervalVar(start, size, end, done, "interval");
    }

    private void Before(Work later, Work earlier) => model.Add(later.Start >= earlier.End);

    private void AfterEvery(string word, string earlier)
    {
        foreach (var later in Of(word))
        {
            foreach (var before in Of(earlier))
                Before(later, before);
        }
    }

    private IEnumerable<Work> Of(string word) => plan.Steps.Where(step => step.Kind == word && works.ContainsKey(step.Id)).Select(step => works[step.Id]);

    private static bool IsFirstTack(PlanStep step) => step.Id == $"tack/{step.Batch}";

    private int Slow(int minutesAt70F) => (int)Math.Ceiling(minutesAt70F * job.Slowness * (1 - 1e-9));

    private SteadyLabel LabelOf(PlanStep coat) => job.Labels[coat.Product![1] - '0'];

    private int Minute(LocalDateTime time) => (int)Period.Between(plan.Start, time, PeriodUnits.Minutes).Minutes;

    private sealed record Work(IntVar Start, IntVar End);
}
