namespace CoatPlan;

/// <summary>How likely a number of cans is enough.</summary>
/// <param name="Product">Key of the product.</param>
/// <param name="Cans">Cans.</param>
/// <param name="Share">The share of draws that they cover, 0 to 1.</param>
public sealed record ChanceCans(string Product, int Cans, double Share);
