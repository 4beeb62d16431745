namespace CoatPlan.Paint;

/// <summary>One coat of one product put on several surfaces in one go, dated.</summary>
/// <param name="Product">Key of the product.</param>
/// <param name="Layer">Layer of the system, from 1.</param>
/// <param name="Coat">Coat in the layer, from 1; 0 is the mist coat.</param>
/// <param name="Surfaces">Ids of the surfaces.</param>
/// <param name="Station">Station of a class, from 1.</param>
/// <param name="Start">Its start, local wall time.</param>
/// <param name="End">Its end, local wall time.</param>
public sealed record SprayedCoat(
    string Product, int Layer, int Coat, ImmutableArray<string> Surfaces, int Station, LocalDateTime Start, LocalDateTime End);
