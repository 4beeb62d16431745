using CoatPlan.Jobs;
using CoatPlan.Quantities;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Reads forms, reaches and ways of putting paint on.</summary>
internal static class MethodRows
{
    private static readonly (string, ApplicationMethod)[] Kinds =
        [("aerosol", ApplicationMethod.Aerosol), ("brush", ApplicationMethod.Brush), ("spray gun", ApplicationMethod.SprayGun)];

    /// <summary>A form, its paint factor still against a panel on which everything lands.</summary>
    public static PartForm Form(PresetRow row)
    {
        double lands = row.Measured("lands", QuantityText.Ratio, value => value.Percent, PresetBounds.Percent).DecimalFractions;
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
            Kinds.FirstOrDefault(kind => kind.Item1 == row.Word).Item2,
            Share(row, "loss", PresetBounds.Loss),
            Share(row, "loss-spread", PresetBounds.Percent),
            flow is { } gramsPerSecond ? MassFlow.FromGramsPerSecond(gramsPerSecond) : null,
            row.Number("button-share", PresetBounds.SomeShare),
            Share(row, "residue", PresetBounds.Loss),
            Share(row, "setup-loss", PresetBounds.Loss),
            row.MeasuredOrNull("fan", QuantityText.Length, value => value.Meters, PresetBounds.Length),
            row.MeasuredOrNull("distance", QuantityText.Length, value => value.Meters, PresetBounds.Length),
            row.Provenance());
    }

    private static Ratio Share(PresetRow row, string key, Problems.Bounds bounds) =>
        row.Measured(key, QuantityText.Ratio, value => value.Percent, bounds);
}
