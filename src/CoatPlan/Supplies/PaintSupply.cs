using CoatPlan.Paint;

namespace CoatPlan.Supplies;

/// <summary>What is bought of one product.</summary>
/// <param name="Demand">How much of it the job takes.</param>
/// <param name="OnShelf">Packages on the shelf, at least 0; a started one counts as its share.</param>
/// <param name="Buy">Packages to buy: what is needed less what is on the shelf.</param>
/// <param name="Packs">Packs that these come in.</param>
/// <param name="Price">Price of what is bought, packs bought whole; null where the price of a package is unknown and something is bought.</param>
public sealed record PaintSupply(ProductDemand Demand, double OnShelf, int Buy, int Packs, decimal? Price);
