using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>What must be done around the coats, in which order, and why.</summary>
public static class PrepSequence
{
    /// <summary>Builds the sequence of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="labels">The label of each of the job's products.</param>
    /// <param name="surfaces">The job's surfaces, measured, in the order of the job.</param>
    /// <param name="texts">Rules and warnings: <see cref="PrepTexts.Standard"/>, or those with a shop's own over them.</param>
    /// <exception cref="ArgumentException">A surface whose system or product the job does not have, or a word the catalogue does not have.</exception>
    public static Sequence Build(Job job, Catalogue catalogue, Labels labels, ImmutableArray<MeasuredSurface> surfaces, PrepTexts texts)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(labels);
        ArgumentNullException.ThrowIfNull(texts);

        var jobTraits = JobTraits.Of(job);
        var repeatedNames = job.Surfaces.GroupBy(surface => surface.Name, StringComparer.Ordinal)
            .Where(alike => alike.Count() > 1).Select(alike => alike.Key).ToHashSet(StringComparer.Ordinal);
        var context = new PrepContext
        {
            Rules = texts.Rules,
            Catalogue = catalogue,
            Job = jobTraits,
            Format = job.UnitFormat,
            Surfaces = [.. surfaces.Select(surface => Settle(surface, job, catalogue, labels, texts, jobTraits, repeatedNames))],
        };

        var (opening, closing) = WholeJobPreparation.Of(context);
        var batches = new BatchPreparation(context with { LastOpening = opening.LastOrDefault()?.Id });
        var groups = Groups.Of(context.Surfaces);
        var ofGroups = groups.SelectMany(group => batches.Operations(group.Surfaces, group.Id));
        var operations = opening.Concat(ofGroups).Concat(closing).OrderBy(o => o.Stage).ThenBy(o => o.Order).ToArray();

        return new Sequence(batches)
        {
            Operations = [.. operations.Select(operation => Resolve(operation, operations))],
            Warnings = Warnings.Of(job, context, texts.Warnings),
            Groups = groups,
        };
    }

    private static SettledSurface Settle(
        MeasuredSurface measured, Job job, Catalogue catalogue, Labels labels, PrepTexts texts, Traits jobTraits, HashSet<string> repeatedNames)
    {
        var layers = Layers(measured.Surface, job, labels);
        var pairings = Pairings.Of(measured, layers, texts.Warnings.Through, catalogue);
        var own = SurfaceTraits.Of(measured, layers, pairings, job, catalogue);
        var (operations, known) = Settling.Settle(DerivedTrait.Follow(texts.Rules.Traits, own.And(jobTraits)), texts.Rules, catalogue);
        var name = repeatedNames.Contains(measured.Surface.Name) ? $"{measured.Surface.Name} ({measured.Id})" : measured.Surface.Name;
        return new SettledSurface
        {
            Measured = measured,
            Name = name,
            Masked = Masking.OnePiece(measured, name, texts.Rules.Masking, catalogue),
            Layers = layers,
            Pairings = pairings,
            Own = DerivedTrait.Follow(texts.Rules.Traits, own),
            Known = DerivedTrait.Follow(texts.Warnings.Traits, known),
            Operations = operations,
        };
    }

    private static ImmutableArray<PreparedLayer> Layers(JobSurface surface, Job job, Labels labels)
    {
        var system = job.Systems.FirstOrDefault(system => system.Key == surface.System)
            ?? throw new ArgumentException($"the job has no system '{surface.System}', which '{surface.Id}' asks for", nameof(job));
        return [.. system.Layers.Select(layer => new PreparedLayer(labels[layer.Product], layer.OnlyBare))];
    }

    /// <summary>Names the operations that must be done on every surface first.</summary>
    private static Operation Resolve(Operation operation, Operation[] all) =>
        operation.AfterEvery.IsEmpty
            ? operation
            : operation with
            {
                After =
                [
                    .. operation.After
                        .Concat(all.Where(other => operation.AfterEvery.Contains(other.Word, StringComparer.Ordinal)).Select(other => other.Id))
                        .Distinct(StringComparer.Ordinal),
                ],
            };
}
