namespace CoatPlan.Tests.Validator;

/// <summary>A plan beside its job, with what several rules ask of both.</summary>
internal sealed class PlanUnderTest
{
    private readonly Dictionary<string, PlannedStep> _byId;

    public PlanUnderTest(PlanView plan, JobView job)
    {
        Plan = plan;
        Job = job;
        _byId = plan.Steps.GroupBy(step => step.Id).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);
        Runs = [.. BuildRuns()];
    }

    public PlanView Plan { get; }

    public JobView Job { get; }

    public ImmutableArray<CoatRun> Runs { get; }

    /// <summary>Only a plan without reasons claims to do the whole job.</summary>
    public bool ClaimsWhole => Plan.Reasons.Length == 0;

    public IEnumerable<PlannedStep> Coats => Plan.Steps.Where(step => step.IsCoat);

    public PlannedStep? Step(string id) => _byId.GetValueOrDefault(id);

    public LabelView? Label(string? product) => product is null ? null : Job.Products.GetValueOrDefault(product);

    /// <summary>A step that the job file reports as done is a fact, and no rule for plans binds it.</summary>
    public bool IsDone(PlannedStep step) =>
        Job.Done.Any(done => (done.Surfaces.Length == 0 || step.Surfaces.Length == 0) && done.Operation == step.Kind)
        || (step.Surfaces.Length > 0 && step.Surfaces.All(surface => Job.Done.Any(done =>
            done.Surfaces.Contains(surface)
            && (done.Operation == step.Kind && done.Operation != "coat" || step.IsCoat && done.Layer == step.Layer && done.Coat == step.Coat))));

    public bool AnyDoneOn(string surface) => Job.Done.Any(done => done.Surfaces.Contains(surface));

    /// <summary>When hands are at the step: its time without the breaks between spans.</summary>
    public ImmutableArray<Span> Active(PlannedStep step) =>
        step.Hands > 0 && step.People > 0 && !IsDone(step) ? Job.Hours.Within(step.Start, step.End) : [new Span(step.Start, step.End)];

    /// <summary>How many times slower than the label a film dries at the very least: every hour of the weather is too cold. Never under 1.</summary>
    public double Slowness(LabelView label)
    {
        if (Job.Weather is null || label.HasTable || !FollowsTemperatureOnly(label))
        {
            return 1;
        }

        // What an open heater left behind fades on top of a day that warms meanwhile.
        double left = Job.OpenHeater && Job.HoldC is { } hold ? Math.Max(0, hold - Job.Weather.LowestC) : 0;
        double warmest = Math.Max(Job.Weather.HighestC + left, Job.HoldC ?? double.MinValue);
        return Math.Max(1, Math.Pow(2, (label.AtC - warmest) / 10));
    }

    /// <summary>How many times faster than the label a window closes at the very least: every hour of the weather is warmer. Never under 1.</summary>
    public double Haste(LabelView label)
    {
        if (Job.Weather is null || label.HasTable || Job.Outdoors || !FollowsTemperatureOnly(label))
        {
            return 1;
        }

        return Math.Max(1, Math.Pow(2, (Job.Weather.LowestC - label.AtC) / 10));
    }

    public double LeastMinutes(LabelView? label, string stage) =>
        label?.Stage(stage) is { } minutes ? minutes * Slowness(label) : 0;

    private static bool FollowsTemperatureOnly(LabelView label) =>
        label.Drying is "solvent" or "oxidation" or "two-part" or "two part" || (label.Drying is null && !label.HasPreset);

    private IEnumerable<CoatRun> BuildRuns()
    {
        var stations = Plan.Steps.Where(step => step.IsCoat).Select(step => step.Station).DefaultIfEmpty(0).Distinct().Order().ToArray();
        foreach (var surface in Job.Surfaces)
        {
            foreach (int station in stations)
            {
                var others = Plan.Steps.Where(step => !step.IsCoat && step.Surfaces.Contains(surface.Id) && (step.Station == station || step.Station == 0))
                    .OrderBy(step => step.Start).ToImmutableArray();
                var planned = Plan.Steps.Where(step => step.IsCoat && step.Station == station && step.Surfaces.Contains(surface.Id) && step is { Layer: not null, Coat: not null })
                    .Select(step => new CoatFact(step.Layer!.Value, step.Coat!.Value, step.Of, step.Product, step.Start, step.End, step)).ToArray();
                var done = Job.Done.Where(item => item.Surfaces.Contains(surface.Id) && item is { Layer: not null, Coat: not null }
                        && !planned.Any(fact => fact.Layer == item.Layer && fact.Coat == item.Coat))
                    .Select(item => new CoatFact(item.Layer!.Value, item.Coat!.Value, null, LayerProduct(surface, item.Layer!.Value), item.At, item.At, null)).ToArray();

                // Pieces of one surface may be sprayed in several batches; then each batch has its own run of coats.
                bool pieces = planned.GroupBy(fact => (fact.Layer, fact.Coat)).Any(group => group.Count() > 1);
                var batches = pieces ? planned.Select(fact => fact.Step!.Batch).Distinct().ToArray() : [null];
                foreach (string? batch in batches)
                {
                    var facts = planned.Where(fact => !pieces || fact.Step!.Batch == batch).Concat(done)
                        .OrderBy(fact => fact.Start).ThenBy(fact => fact.End).ToImmutableArray();
                    yield return new CoatRun(surface, station, batch, facts) { Others = others };
                }
            }
        }
    }

    private string? LayerProduct(JobSurface surface, int layer) =>
        Job.Systems.GetValueOrDefault(surface.System) is { IsDefault: false } layers && layer <= layers.Length ? layers[layer - 1].Product : null;
}
