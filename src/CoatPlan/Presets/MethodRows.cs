using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Reads forms, reaches and ways of putting paint on.</summary>
internal static class MethodRows
{
    // In the order of ApplicationMethod.
    private static readonly string[] Kinds = ["aerosol", "brush", "spray gun"];

    /// <summary>A form, its paint factor still against a panel on which everything lands.</summary>
    public static PartForm Form(PresetRow row)
    {
        double lands = row.Percent("lands", PresetBounds.Percent).DecimalFractions;
        double time = row.Number("time", PresetBounds.Factor);
        double relief = row.Number("relief", PresetBounds.Factor);
        row.Texts("range");
        return new(row.Word, lands, lands > 0 ? 1 / lands : 1, time, relief, row.Provenance());
    }

    /// <summary>Forms against the panel among them.</summary>
    public static ImmutableArray<PartForm> AgainstPanel(ImmutableArray<PartForm> forms)
    {
        double panel = forms.FirstOrDefault(form => form.Word == JobDefaults.Form)?.ShareLanding ?? 1;
        return [.. forms.Select(form => form with { PaintFactor = Math.Max(1, form.PaintFactor * panel) })];
    }

    public static Reach Reach(PresetRow row) => new(row.Word, row.Text("title"), row.Number("time", PresetBounds.Factor), row.Provenance());

    public static CoatingMethod Method(PresetRow row)
    {
        row.Texts("range");
        double? flow = row.Has("flow") ? row.InUnit("flow", "g/s", PresetBounds.Flow) : null;
        return new(
            row.Word,
            (ApplicationMethod)Math.Max(0, Array.IndexOf(Kinds, row.Word)),
            row.Percent("loss", PresetBounds.Loss),
            row.Percent("loss-spread", PresetBounds.Percent),
            flow is { } gramsPerSecond ? MassFlow.FromGramsPerSecond(gramsPerSecond) : null,
            row.Number("button-share", PresetBounds.SomeShare),
            row.Percent("residue", PresetBounds.Loss),
            row.Percent("setup-loss", PresetBounds.Loss),
            row.Has("fan") ? row.Length("fan") : null,
            row.Has("distance") ? row.Length("distance") : null,
            row.Provenance());
    }
}
