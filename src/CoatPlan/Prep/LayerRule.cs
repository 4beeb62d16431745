namespace CoatPlan.Prep;

/// <summary>A row of prep.yaml: what a layer wants before a layer of another product goes over it.</summary>
/// <param name="Class">Class of the layer below.</param>
/// <param name="Way">How it is scuffed.</param>
/// <param name="Why">Why, with {below} and {above} for the products.</param>
/// <param name="Source">Where that comes from.</param>
/// <param name="Status">How well that is vouched for.</param>
internal sealed record LayerRule(string Class, string Way, string Why, string Source, string Status)
{
    /// <summary>Reads a row.</summary>
    public static LayerRule Read(RuleRow row) =>
        new(row.Key, row.Text("way"), row.Text("why"), row.OptionalText("source") ?? "", row.Text("status"));
}
