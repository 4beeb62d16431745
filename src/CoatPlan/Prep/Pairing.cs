using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>A product and what it meets, with the verdict.</summary>
/// <param name="On">What it meets: material, spots (bare spots in an old finish), finish or layer.</param>
/// <param name="Above">The product.</param>
/// <param name="Below">Material, finish, or name of the product below.</param>
/// <param name="Judgement">The verdict and why.</param>
internal sealed record Pairing(string On, Label Above, string Below, Judgement Judgement)
{
    public const string OnMaterial = "material";
    public const string OnSpots = "spots";
    public const string OnFinish = "finish";
    public const string OnLayer = "layer";
}
