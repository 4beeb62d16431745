using CoatPlan.App.Wording;
using CoatPlan.Presets;

namespace CoatPlan.App;

/// <summary>The presets as tables of words and what they mean.</summary>
internal static class PresetTables
{
    /// <summary>Every table that a job file draws words from.</summary>
    /// <param name="catalogue">The presets.</param>
    public static ImmutableArray<PresetTable> Of(Catalogue catalogue) =>
    [
        Materials(catalogue),
        Finishes(catalogue),
        Conditions(catalogue),
        Products(catalogue),
        Pieces(catalogue),
        MaskKinds(catalogue),
        new("Hazards", [.. catalogue.Hazards.Select(row => new PresetRow(row.Word, row.Means, From(row.Provenance)))]),
        new("Operations", [.. catalogue.Operations.Select(row => new PresetRow(row.Word, $"{row.Title}. {row.Why}", From(row.Provenance)))]),
        new("Solvents", [.. catalogue.Solvents.Select(row => new PresetRow(row.Name, $"CAS {row.Cas}. {row.Note}".TrimEnd(), From(row.Provenance)))]),
    ];

    /// <summary>What surfaces are made of.</summary>
    /// <param name="catalogue">The presets.</param>
    public static PresetTable Materials(Catalogue catalogue) =>
        new("Materials", [.. catalogue.Materials.Select(row => new PresetRow(row.Word, MeaningOf(row), From(row.Provenance)))]);

    /// <summary>Old finishes.</summary>
    /// <param name="catalogue">The presets.</param>
    public static PresetTable Finishes(Catalogue catalogue) =>
        new("Finishes", [.. catalogue.Finishes.Select(row => new PresetRow(row.Word, MeaningOf(row), From(row.Provenance)))]);

    /// <summary>What is wrong with surfaces.</summary>
    /// <param name="catalogue">The presets.</param>
    public static PresetTable Conditions(Catalogue catalogue) =>
        new("Conditions", [.. catalogue.Conditions.Select(row => new PresetRow(row.Word, MeaningOf(row), From(row.Provenance)))]);

    /// <summary>Classes of product.</summary>
    /// <param name="catalogue">The presets.</param>
    public static PresetTable Products(Catalogue catalogue) =>
        new("Products", [.. catalogue.Products.Select(row => new PresetRow(row.Word, MeaningOf(row), From(row.Provenance)))]);

    /// <summary>Usual pieces.</summary>
    /// <param name="catalogue">The presets.</param>
    public static PresetTable Pieces(Catalogue catalogue) =>
        new("Pieces", [.. catalogue.Pieces.Select(row => new PresetRow(row.Name, MeaningOf(row), From(row.Provenance)))]);

    /// <summary>Kinds of things that are masked.</summary>
    /// <param name="catalogue">The presets.</param>
    public static PresetTable MaskKinds(Catalogue catalogue) =>
        new("Mask kinds", [.. catalogue.MaskKinds.Select(row => new PresetRow(row.Word, row.NeverPainted ? $"{row.Why}; never painted" : row.Why, From(row.Provenance)))]);

    private static string MeaningOf(Material material)
    {
        var kind = material switch
        {
            { IsFerrous: true } => "rusts",
            { IsPlated: true } => "plated: no wire, no grinding without respiratory protection",
            { IsMetal: true } => "metal that does not rust red",
            { IsPlastic: true } => "plastic or composite",
            _ => "flexible: masked, not painted",
        };
        var cast = material.Cast ? ", cast and rough" : "";
        return $"{kind}{cast}; {Written.Number(material.Gauge.Millimeters, 1)} mm thick unless said, true area {Written.Number(material.Relief, 2)} times the outline";
    }

    private static string MeaningOf(Finish finish)
    {
        var notes = Titled(finish.Title, finish.Word);
        if (finish.Gloss)
            notes.Add("glossy until scuffed");
        if (finish.MayHoldLead)
            notes.Add("may hold lead");
        else if (finish.OldMayHoldLead)
            notes.Add("may hold lead on an old vehicle");
        return string.Join("; ", notes);
    }

    private static string MeaningOf(Condition condition)
    {
        var asks = condition.Asks.IsEmpty ? "" : $"; asks for {string.Join(", ", condition.Asks)}";
        return string.Join("; ", Titled(condition.Title, condition.Word).Append($"{Written.Percent(condition.BareShare)} bare after prep{asks}"));
    }

    private static string MeaningOf(ProductClass product)
    {
        var coats = product.CoatsLeast == product.CoatsMost ? $"{product.CoatsMost}" : $"{product.CoatsLeast} to {product.CoatsMost}";
        var note = product.Note.Length == 0 ? "" : $" {product.Note}";
        return $"{product.Title}; {coats} coats, one can covers {Written.Number(product.Covers.SquareMeters, 2)} m² "
            + $"({Written.Number(product.Covers.SquareFeet, 1)} ft²) in one coat, stands {Written.Number(product.Heat.DegreesCelsius, 0)} °C.{note}";
    }

    private static List<string> Titled(string title, string word) => title == word ? [] : [title];

    private static string MeaningOf(Piece piece) =>
        $"about {Written.Number(piece.Outline.SquareFeet, 1)} ft² ({Written.Number(piece.Outline.SquareMeters, 2)} m²) each, usually {string.Join(" or ", piece.Materials)}";

    private static string From(Provenance provenance) => $"{Word(provenance.Status)}: {provenance.Source}";

    private static string Word(Status status) => status switch
    {
        Status.Published => "published",
        Status.SecondHand => "published, read second-hand",
        Status.Computed => "computed",
        Status.CommonPractice => "common practice",
        Status.Estimate => "estimate",
        Status.FromMemory => "from memory",
        _ => throw new ArgumentOutOfRangeException(nameof(status), status, "A status of the presets."),
    };
}
