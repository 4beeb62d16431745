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

    /// <summary>The label of a product.</summary>
    /// <param name="key">The product's key in the job.</param>
    /// <exception cref="ArgumentException">The job has no such product.</exception>
    public Label this[string key] =>
        All.FirstOrDefault(label => label.Key == key) ?? throw new ArgumentException($"no product has the key '{key}'", nameof(key));
}
