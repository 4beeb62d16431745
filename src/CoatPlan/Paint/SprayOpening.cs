namespace CoatPlan.Paint;

/// <summary>What is sprayed from packages that are opened together.</summary>
/// <param name="Coats">The coats on each surface; one that several stations put on is listed once for each, or counted by the next.</param>
/// <param name="Times">How often each of them is put on.</param>
/// <param name="Sessions">Times that the product is taken up meanwhile.</param>
internal sealed record SprayOpening(ImmutableArray<SurfaceCoat> Coats, int Times, int Sessions);
