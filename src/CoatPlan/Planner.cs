using CoatPlan.Air;
using CoatPlan.Areas;
using CoatPlan.Cautions;
using CoatPlan.Climate;
using CoatPlan.Composition;
using CoatPlan.Paint;
using CoatPlan.Plans;
using CoatPlan.Prep;
using CoatPlan.Timetable;
using CoatPlan.Vapour;

namespace CoatPlan;

/// <summary>Plans a job: one pure function, the same job gives the same plan on every machine.</summary>
public static class Planner
{
    /// <summary>The plan of a job.</summary>
    /// <param name="ready">The job, read and checked.</param>
    public static Plan Plan(ReadyJob ready)
    {
        ArgumentNullException.ThrowIfNull(ready);
        var (job, labels, trade, catalogue) = (ready.Job, ready.Labels, ready.Trade, ready.Trade.Catalogue);

        var surfaces = SurfaceAreas.Measure(job, catalogue);
        var sequence = PrepSequence.Build(job, catalogue, labels, surfaces, trade.Prep);
        var coats = PaintWork.Of(job, surfaces, labels, catalogue);
        var climate = PlaceClimate.Of(job.Place, job.Start, ClimateFigures.Of(catalogue), ready.Forecast);
        var dated = Timetabling.Date(job, sequence, coats, climate, catalogue);
        var demand = PaintDemand.Count(job, coats, Sprayed(dated), labels, catalogue.Figures);
        var air = WorkAir.Of(job.Place, Releases(dated, ready), catalogue.Figures);
        var cautions = CautionsFor.Job(CautionFacts.From(job, labels, sequence), trade.Cautions);

        return new Plan
        {
            Job = job.Name,
            Units = job.Units,
            Start = job.Start,
            Finish = dated.Finish,
            InService = dated.InService,
            FinishBy = job.FinishBy,
            Reasons = dated.Reasons,
            LowerBound = dated.LowerBound,
            Surfaces = PlanSurfaces.Of(surfaces, coats, dated),
            Steps = PlanSteps.Of(dated),
            Supplies = PlanSupplies.Of(job, demand),
            Air = PlanAirs.Of(job.Place, air),
            Respirator = new PlanRespirator("", []),
            Cautions = PlanCautions.Of(cautions),
            Warnings = PlanWarnings.Of([.. sequence.Warnings, .. coats.Warnings]),
            Masks = PlanMasks.Of(job),
            Labels = PlanLabels.Of(labels),
            OpenHours = [.. dated.Spans.Select(span => new PlanSpan(span.From, span.To))],
        };
    }

    private static ImmutableArray<SprayedCoat> Sprayed(DatedJob dated) =>
    [
        .. dated.Steps.Where(step => step.Label is not null).Select(step => new SprayedCoat(
            step.Label!.Key, step.Layer!.Value, step.Coat!.Value, step.Surfaces, step.Station ?? 1, step.Start, step.End)),
    ];

    private static ImmutableArray<DatedRelease> Releases(DatedJob dated, ReadyJob ready) =>
    [
        .. dated.Steps.Where(step => step.Mass is not null).Select(step => new DatedRelease(
            step.Id, step.Start, step.End, CoatVapour.Of(step.Label!, step.Mass!.Value, ready.Trade.Catalogue.Figures))),
    ];
}
