using CoatPlan.Presets;

namespace CoatPlan.Paint;

/// <summary>What hides what in one job: its surfaces share few colours and few grounds, so each pair is worked out once.</summary>
internal sealed class HidingOnce(Catalogue catalogue)
{
    private readonly Dictionary<(string Product, double? Below), int?> over = [];
    private readonly Dictionary<(string Product, int Coats, double? Below), double?> under = [];
    private readonly Dictionary<(string Product, int Without), PrimerShade?> primers = [];

    /// <summary>See <see cref="HidingCoats.Over(double?, Label, Figures)"/>.</summary>
    public int? Over(double? below, Label label)
    {
        if (!over.TryGetValue((label.Key, below), out var known))
            over[(label.Key, below)] = known = HidingCoats.Over(below, label, catalogue.Figures);
        return known;
    }

    /// <summary>See <see cref="OldColour.Under"/>.</summary>
    public double? Under(Label label, int coats, double? before)
    {
        if (!under.TryGetValue((label.Key, coats, before), out var known))
            under[(label.Key, coats, before)] = known = OldColour.Under(label, coats, before);
        return known;
    }

    /// <summary>See <see cref="PrimerShade.For"/>.</summary>
    public PrimerShade? Primer(Label label, int without)
    {
        if (!primers.TryGetValue((label.Key, without), out var known))
            primers[(label.Key, without)] = known = PrimerShade.For(label, without, catalogue);
        return known;
    }
}
