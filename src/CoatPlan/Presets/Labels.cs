using CoatPlan.Jobs;
using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>The labels of a job's products, in the order of the job file.</summary>
/// <param name="All">One for each product.</param>
public sealed record Labels(ImmutableArray<Label> All)
{
    /// <summary>How far a surface stays above the dew point where the label does not say: 3 °C. Source: ISO 8502-4, read second-hand.</summary>
    public static readonly TemperatureDelta AboveDew = TemperatureDelta.FromKelvins(3);

    /// <summary>Coldest air of a label that names no least temperature.</summary>
    public static readonly Temperature ColdestAir = Temperature.FromDegreesCelsius(-100);

    /// <summary>Hottest air of a label that names no highest temperature.</summary>
    public static readonly Temperature HottestAir = Temperature.FromDegreesCelsius(100);

    /// <summary>The labels of a job, each the job's words over its product class over the contract's defaults.</summary>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">What the trade knows.</param>
    /// <param name="file">Name of the job file for problems; null: not said.</param>
    /// <returns>The labels, or every product class and solvent that nobody knows and every field that nothing fills.</returns>
    public static LabelsReading Resolve(Job job, Catalogue catalogue, string? file = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(catalogue);
        var problems = new ProblemList(file);
        var labels = job.Products.Select(product => PanelReadings.Over(LabelResolution.Of(product, catalogue, problems), job.TestPanels)).ToImmutableArray();
        return problems.Count == 0 ? new(new(labels), []) : new(null, problems.InOrder());
    }

    /// <summary>The label of a product.</summary>
    /// <param name="key">The product's key in the job.</param>
    /// <exception cref="ArgumentException">The job has no such product.</exception>
    public Label this[string key]
    {
        get
        {
            foreach (var label in All)
            {
                if (label.Key == key)
                    return label;
            }

            throw new ArgumentException($"no product has the key '{key}'", nameof(key));
        }
    }
}
