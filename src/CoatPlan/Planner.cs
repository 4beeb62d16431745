using CoatPlan.Air;
using CoatPlan.Composition;
using CoatPlan.Explanations;
using CoatPlan.Jobs;
using CoatPlan.Obstacles;
using CoatPlan.Paint;
using CoatPlan.Plans;
using CoatPlan.Prep;
using CoatPlan.Presets;
using CoatPlan.Supplies;
using CoatPlan.Timetable;
using Operation = CoatPlan.Prep.Operation;

namespace CoatPlan;

/// <summary>Plans a job: one pure function, the same job gives the same plan on every machine.</summary>
public static class Planner
{
    /// <summary>The plan of a job.</summary>
    /// <param name="ready">The job, read and checked.</param>
    /// <param name="depth">How far to search for an earlier finish.</param>
    /// <param name="cancel">Ends a search whose answer is no longer wanted.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static Plan Plan(ReadyJob ready, SearchDepth depth = SearchDepth.Full, CancellationToken cancel = default) => Work(ready, depth, cancel).Plan;

    /// <summary>The plan of a job at once after a change of it, begun from the plan before: what the change does not touch tends to stay where it was, and the finish too.</summary>
    /// <remarks>It follows from the job and the plan before, and from nothing else. The plan that is printed, <see cref="Plan"/> in full, follows from the job alone.</remarks>
    /// <param name="ready">The job after the change, read and checked.</param>
    /// <param name="before">The plan of the job before it.</param>
    public static Plan Replan(ReadyJob ready, Plan before) => Work(ready, before).Plan;

    /// <summary>Explains a figure of the plan of a job: its sum, what it follows from, and the source of each.</summary>
    /// <param name="ready">The job, read and checked.</param>
    /// <param name="what">The figure, by its plain name or its place in the plan's JSON; see <see cref="Explaining.Of"/>.</param>
    /// <param name="depth">How far to search for an earlier finish.</param>
    public static ExplanationReading Explain(ReadyJob ready, string what, SearchDepth depth = SearchDepth.Full) => Explaining.Of(Work(ready, depth).Workings, what);

    /// <summary>The plan of a job with everything that it was worked out from and through.</summary>
    /// <param name="ready">The job, read and checked.</param>
    /// <param name="depth">How far to search for an earlier finish.</param>
    /// <param name="cancel">Ends a search whose answer is no longer wanted.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static (Plan Plan, Workings Workings) Work(ReadyJob ready, SearchDepth depth, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(ready);
        return Work(Arrange(ready, depth, null, cancel) with { Depth = depth }, cancel);
    }

    /// <summary>The plan at once after a change, as <see cref="Replan"/> gives it, with everything that it was worked out from and through.</summary>
    /// <param name="ready">The job after the change, read and checked.</param>
    /// <param name="before">The plan of the job before it.</param>
    public static (Plan Plan, Workings Workings) Work(ReadyJob ready, Plan before)
    {
        ArgumentNullException.ThrowIfNull(ready);
        ArgumentNullException.ThrowIfNull(before);
        return Work(Arrange(ready, SearchDepth.Quick, before));
    }

    /// <summary>A job with its work arranged in time, from which its plan, and what else is asked of it, follow.</summary>
    /// <param name="ready">The job, read and checked.</param>
    /// <param name="depth">How far to search for an earlier finish.</param>
    /// <param name="before">The plan of the job before a change, from which a quick search begins; null for none.</param>
    /// <param name="cancel">Ends a search whose answer is no longer wanted.</param>
    internal static ArrangedJob Arrange(ReadyJob ready, SearchDepth depth, Plan? before = null, CancellationToken cancel = default)
    {
        var (_, sequence, coats) = ready.Groundwork.Prepared;
        var air = new AirAround(ready.Groundwork.Airs, ready.Job, ready.Trade.Catalogue);
        // Where not all of it could be placed before, there is nothing to stay near.
        var baseline = before?.InService is null ? null : new Baseline(before.Steps.Select(step => new BaselineStep(step.Id, step.Surfaces, step.Batch, step.Station, step.Start, step.End, step.HandsMin)));
        return new ArrangedJob(ready, Timetabling.Settle(ready.Job, sequence, coats, air, ready.Trade.Catalogue, depth, baseline, cancel));
    }

    /// <summary>The plan of an arranged job, with what it was worked out from and through.</summary>
    internal static (Plan Plan, Workings Workings) Work(ArrangedJob arranged, CancellationToken cancel = default)
    {
        var (ready, settled) = arranged;
        var (surfaces, sequence, coats) = ready.Groundwork.Prepared;
        var (job, labels, catalogue) = (ready.Job, ready.Labels, ready.Trade.Catalogue);
        var sprayed = ready.Groundwork.Sprayed(PlacedCoat.Of(settled));
        var weighed = WeighedCan.Of(job, coats);
        var dated = Timetabling.Date(settled);
        var impasse = arranged.Depth == SearchDepth.Full && !dated.Reasons.IsEmpty ? JobImpasse.Of(ready, sequence, coats, settled, cancel) : null;
        var supplies = PaintSupplies.Of(sprayed.Demand, job.Have);
        var consumables = sprayed.Besides(OperationsAtOneStation(dated));
        var quote = QuoteCount.Of(job, HandsOnHours.Of(dated, coats), supplies, consumables, coats, catalogue.Figures);
        var air = sprayed.Air;
        var respirator = RespiratorChoice.For(air, Hazards(dated, sequence, coats), catalogue);

        var plan = new Plan
        {
            Job = job.Name,
            Units = job.Units,
            Currency = job.Prices?.Currency ?? JobDefaults.Currency,
            Start = job.Start,
            Finish = dated.Finish,
            InService = dated.InService,
            FinishBy = job.FinishBy,
            Reasons = PlanImpasses.Reasons(impasse, dated.Reasons),
            Obstacles = PlanImpasses.Obstacles(impasse),
            WaysOut = PlanImpasses.WaysOut(impasse),
            LowerBound = dated.LowerBound,
            Surfaces = PlanSurfaces.Of(surfaces, coats, dated),
            Steps = PlanSteps.Of(dated, catalogue.Figures),
            Supplies = PlanSupplies.Of(supplies, catalogue.Figures),
            Consumables = PlanSupplies.Of(consumables),
            Layers = PlanLayers.Of(coats),
            Weighed = PlanLayers.Of(weighed),
            Air = PlanAirs.Of(job, air, respirator, dated.IsWhole),
            Respirator = new PlanRespirator(respirator.Kind, respirator.Why) { Factor = respirator.Factor, CartridgeH = respirator.CartridgeLife?.TotalHours },
            Cautions = PlanCautions.Of(sprayed.Cautions),
            Warnings = PlanWarnings.Of([.. sequence.Warnings, .. coats.Warnings, .. WeighedCan.Warnings(weighed, labels), .. sprayed.Warnings, .. PaintSupplies.Warnings(job.Have, labels), .. Consumables.Warnings(job, catalogue), .. Deadline(dated, ready, impasse)]),
            Quote = PlanQuotes.Of(quote),
            Masks = PlanMasks.Of(job, sequence),
            Labels = PlanLabels.Of(labels),
            Idle = PlanWhys.Idle(dated),
            RestPoints = PlanWhys.RestPoints(dated),
            OpenHours = [.. dated.Spans.Select(span => new PlanSpan(span.From, span.To))],
            AirHours = PlanAirHours.Of(settled, dated),
        };
        return (plan, new Workings
        {
            Job = job,
            Labels = labels,
            Catalogue = catalogue,
            Measured = surfaces,
            Coats = coats,
            Dated = dated,
            Paint = supplies,
            Besides = consumables,
            AirReport = air,
            Surfaces = plan.Surfaces,
            Steps = plan.Steps,
            Supplies = plan.Supplies,
            Layers = plan.Layers,
            Weighed = plan.Weighed,
            Consumables = plan.Consumables,
            Air = plan.Air,
            Respirator = plan.Respirator,
            Quote = plan.Quote,
        });
    }

    // What could not be placed will be breathed too, once it is done.
    private static BreathingHazards Hazards(DatedJob dated, Sequence sequence, Coats coats) => new()
    {
        Products = [.. dated.Steps.Select(step => step.Label).OfType<Label>().Concat(coats.All.Select(coat => coat.On.Label)).DistinctBy(label => label.Key)],
        Sprays = coats.All.Any(coat => coat.On.Label.Method.Sprays),
        MakesDust = dated.Steps.Any(step => step.MakesDust),
        Humidity = dated.Steps.Where(step => step.Sprays).Select(step => step.Conditions.Humidity).DefaultIfEmpty(UnitsNet.Ratio.FromPercent(50)).Max(),
        MayHoldLead = sequence.Warnings.Any(warning => warning.Code == "lead-suspected"),
    };

    private static ImmutableArray<Warning> Deadline(DatedJob dated, ReadyJob ready, Impasse? impasse) =>
        dated.Finish is { } finish && finish > ready.Job.FinishBy
            ?
            [
                ready.Trade.Prep.Warnings.Write(
                    "deadline",
                    null,
                    null,
                    ("finish", WaitWords.Moment(finish)),
                    ("wanted", WaitWords.Moment(ready.Job.FinishBy.Value)),
                    ("instead", WhatMayHelp(impasse))),
            ]
            : [];

    // Only what was tried is said to help.
    private static string WhatMayHelp(Impasse? impasse) => impasse is { WaysOut.IsEmpty: false }
        ? "Its ways out were each tried."
        : WaitWords.MayHelp;

    // In the order of the work on a part, whenever it is done: what is used up, and the words that say for what, then stay when steps move.
    private static ImmutableArray<Operation> OperationsAtOneStation(DatedJob dated) =>
    [
        .. dated.Steps.Where(step => step.Station is null or 1).Select(step => step.Operation).OfType<Operation>()
            .OrderBy(operation => operation.Stage).ThenBy(operation => operation.Order).ThenBy(operation => operation.Id, StringComparer.Ordinal),
    ];
}
