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
    /// <param name="row">The row.</param>
    /// <param name="ways">Ways of scuffing.</param>
    public static LayerRule Read(RuleRow row, IReadOnlyCollection<string> ways) =>
        new(row.Key, row.Name("way", "way of scuff", ways) ?? row.Text("way"), row.Text("why"), row.OptionalText("source") ?? "", row.Text("status"));
}
