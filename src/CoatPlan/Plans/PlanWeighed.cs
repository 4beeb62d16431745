namespace CoatPlan.Plans;

/// <summary>What is left in cans that were weighed after a coat, against what comes next, in packages.</summary>
/// <param name="Product">Key of the product.</param>
/// <param name="Surfaces">Ids of the surfaces of that coat.</param>
/// <param name="Layer">Its layer, from 1.</param>
/// <param name="Coat">The coat after which they were weighed; 0: the mist coat.</param>
/// <param name="LeftCans">What is left that will still spray.</param>
/// <param name="NextCans">What the next coat on those surfaces takes.</param>
/// <param name="RestCans">What all further coats of it on those surfaces take.</param>
public sealed record PlanWeighed(
    string Product, ImmutableArray<string> Surfaces, int Layer, int Coat, double LeftCans, double NextCans, double RestCans)
{
    /// <summary>Whether the next coat can be finished with what is left.</summary>
    public bool Lasts => NextCans <= LeftCans;
}
