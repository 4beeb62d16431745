namespace CoatPlan.Presets;

/// <summary>The labels of a job's products, in the order of the job file.</summary>
/// <param name="All">One for each product.</param>
public sealed record Labels(ImmutableArray<Label> All)
{
    /// <summary>The label of a product.</summary>
    /// <param name="key">The product's key in the job.</param>
    /// <exception cref="ArgumentException">The job has no such product.</exception>
    public Label this[string key] =>
        All.FirstOrDefault(label => label.Key == key) ?? throw new ArgumentException($"no product has the key '{key}'", nameof(key));
}
