using CoatPlan.Cautions;
using CoatPlan.Prep;
using CoatPlan.Presets;
using CoatPlan.Problems;

namespace CoatPlan;

/// <summary>Everything that the trade knows and a person may override: the catalogue, the rules of prep with their warnings, the cautions.</summary>
/// <param name="Catalogue">Materials, products, solvents and the other tables.</param>
/// <param name="Prep">Rules of the prep sequence and its warnings.</param>
/// <param name="Cautions">What a person must be told.</param>
public sealed record Trade(Catalogue Catalogue, PrepTexts Prep, CautionTexts Cautions)
{
    /// <summary>What comes with the library.</summary>
    public static Trade Standard { get; } = new(BuiltInPresets.Read(), PrepTexts.Standard, CautionTexts.Standard);

    /// <summary>What comes with the library, with a person's own files over it.</summary>
    /// <param name="overrides">The files, later ones winning.</param>
    /// <returns>The trade, or everything that is wrong in the files.</returns>
    public static TradeReading Read(ImmutableArray<PresetText> overrides)
    {
        if (overrides.IsEmpty)
            return new TradeReading(Standard, []);

        var catalogue = CatalogueReader.Read(BuiltInPresets.Texts, overrides);
        var prep = PrepTexts.Over(overrides, out var ofPrep);
        var cautions = CautionTexts.Over(overrides, out var ofCautions);
        ImmutableArray<Problem> problems = [.. catalogue.Problems, .. ofPrep, .. ofCautions];
        return catalogue.Catalogue is { } read && problems.IsEmpty
            ? new TradeReading(new Trade(read, prep, cautions), [])
            : new TradeReading(null, problems);
    }
}
