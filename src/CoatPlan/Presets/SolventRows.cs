using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Reads solvents and propellants.</summary>
internal static class SolventRows
{
    /// <summary>Litres of a mole of gas at 25 °C and 1 atm. Source: the limit pairs of 29 CFR 1910.1000 Table Z-1.</summary>
    private const double MolarVolume = 24.45;

    public static Solvent Solvent(PresetRow row)
    {
        double molarMass = row.InUnit("molar-mass", "g/mol", PresetBounds.MolarMass);
        var lel = Parts(row, "lel");
        return new()
        {
            Name = row.Word,
            Cas = row.Text("cas"),
            Aliases = row.Words("aliases"),
            MolarMass = MolarMass.FromGramsPerMole(molarMass),
            Density = row.Density("density"),
            Boiling = row.Temperature("boiling"),
            Propellant = row.Flag("propellant"),
            Voc = row.Flag("voc", none: true),
            LowerExplosiveLimit = lel.IsEmpty ? null : ExplosiveLimit(row, lel),
            LowerExplosiveLimitSource = lel.Length > 2 ? lel[2] : "",
            Legal = Limit(row, "pel", molarMass),
            Recommended = Limit(row, "rel", molarMass),
            ShortTerm = Limit(row, "short-term", molarMass),
            Ceiling = Limit(row, "ceiling", molarMass),
            Idlh = Limit(row, "idlh", molarMass),
            Ozone = Reactivity(row),
            Note = row.TextOr("note", ""),
            Provenance = row.Provenance(),
        };
    }

    private static ExposureLimit ExplosiveLimit(PresetRow row, ImmutableArray<string> parts)
    {
        if (parts.Length != 3) row.Say("lel", Sentences.WrongKind($"`lel` in {row.Where}", $"`{string.Join("; ", parts)}`", "`value; status; list`"));
        var share = row.PercentText("lel", parts[0], PresetBounds.Percent);
        return new(share, parts.Length > 1 ? row.StatusText("lel", parts[1]) : Status.FromMemory);
    }

    private static ExposureLimit? Limit(PresetRow row, string key, double molarMass)
    {
        var parts = Parts(row, key);
        if (parts.IsEmpty) return null;
        if (parts.Length != 2) row.Say(key, Sentences.WrongKind($"`{key}` in {row.Where}", $"`{string.Join("; ", parts)}`", "`value; status`"));
        var status = parts.Length > 1 ? row.StatusText(key, parts[1]) : Status.FromMemory;
        return new(Ratio.FromPartsPerMillion(Ppm(row, key, parts[0], molarMass)), status);
    }

    private static ReactivityFactor? Reactivity(PresetRow row)
    {
        const string Key = "ozone";
        var parts = Parts(row, Key);
        if (parts.IsEmpty) return null;
        if (parts.Length != 2) row.Say(Key, Sentences.WrongKind($"`{Key}` in {row.Where}", $"`{string.Join("; ", parts)}`", "`value; status`"));
        var status = parts.Length > 1 ? row.StatusText(Key, parts[1]) : Status.FromMemory;
        return new(Figure(row, Key, parts[0], PresetBounds.Reactivity), status);
    }

    private static double Ppm(PresetRow row, string key, string text, double molarMass)
    {
        const string ByMass = "mg/m3";
        const string ByVolume = "ppm";
        if (text.EndsWith(ByVolume, StringComparison.Ordinal)) return Figure(row, key, text[..^ByVolume.Length], PresetBounds.Ppm);
        if (text.EndsWith(ByMass, StringComparison.Ordinal))
        {
            return molarMass > 0 ? Figure(row, key, text[..^ByMass.Length], PresetBounds.MilligramsPerCubicMetre) * MolarVolume / molarMass : 0;
        }

        row.Say(key, Sentences.WrongKind($"`{key}` in {row.Where}", $"`{text}`", "a figure in `ppm` or `mg/m3`"));
        return 0;
    }

    private static double Figure(PresetRow row, string key, string text, Bounds bounds) =>
        row.NumberText(key, text.Trim(), bounds);

    private static ImmutableArray<string> Parts(PresetRow row, string key) =>
        row.Has(key) ? [.. row.Text(key).Split(';', StringSplitOptions.TrimEntries)] : [];
}
