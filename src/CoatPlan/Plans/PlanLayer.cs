namespace CoatPlan.Plans;

/// <summary>One layer of a system on one surface: how many coats, who asks for them, and what film they leave.</summary>
/// <param name="Surface">Id of the surface.</param>
/// <param name="Layer">Layer of the system, from 1.</param>
/// <param name="Product">Key of the product.</param>
/// <param name="Coats">Full coats planned.</param>
/// <param name="ByJob">What the system asks; null where it leaves it to the label.</param>
/// <param name="LabelLeast">Fewest coats of the label.</param>
/// <param name="LabelMost">Most coats of the label.</param>
/// <param name="ForHiding">Coats that hide what is below; null where nothing must be hidden.</param>
/// <param name="PrimerShade">A lightness of primer that would save coats; null where none would.</param>
/// <param name="PrimerCoats">Coats that would hide over it; null with the shade.</param>
/// <param name="DryUm">Dry film of all the coats, µm; null where unknown.</param>
/// <param name="WetUm">Wet film of one coat once its propellant is gone, µm; null where unknown.</param>
public sealed record PlanLayer(
    string Surface,
    int Layer,
    string Product,
    int Coats,
    int? ByJob,
    int LabelLeast,
    int LabelMost,
    int? ForHiding,
    string? PrimerShade,
    int? PrimerCoats,
    double? DryUm,
    double? WetUm)
{
    /// <summary>Whether only bare spots take it, and not the whole of the surface.</summary>
    public bool OnlyBare { get; init; }
}
