using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.App;

/// <summary>The presets as tables of words and what they mean.</summary>
internal static class PresetTables
{
    /// <summary>Every table that a job file draws words from.</summary>
    /// <param name="catalogue">The presets.</param>
    /// <param name="units">The units of a job, for the figures of products and pieces; null: both, where there is no job.</param>
    public static ImmutableArray<PresetTable> Of(Catalogue catalogue, PrintUnits? units = null) =>
    [
        Materials(catalogue),
        Finishes(catalogue),
        Conditions(catalogue),
        Products(catalogue, units),
        Pieces(catalogue, units),
        MaskKinds(catalogue),
        new("Hazards", [.. catalogue.Hazards.Select(row => new PresetRow(row.Word, row.Means, From(row.Provenance)))]),
        new("Operations", [.. catalogue.Operations.Select(row => new PresetRow(row.Word, $"{row.Title}. {row.Why}", From(row.Provenance)))]),
        new("Solvents", [.. catalogue.Solvents.Select(row => new PresetRow(row.Name, MeaningOf(row), From(row.Provenance)))]),
        new("Consumables", [.. catalogue.Consumables.Select(row => new PresetRow(row.Word, MeaningOf(row), From(row.Provenance)))]),
        new("Tapes", [.. catalogue.Tapes.Select(row => new PresetRow(row.Word, MeaningOf(row), From(row.Provenance)))]),
        new("Respirators", [.. catalogue.Respirators.Select(row => new PresetRow(row.Word, MeaningOf(row), From(row.Provenance)))]),
        new("Hot places", [.. catalogue.ServiceHeats.Select(row => new PresetRow(row.Place, $"{Degrees(row.Usual)} usual, {Degrees(row.Peak)} for a short time. {row.Note}".TrimEnd(), From(row.Provenance)))]),
        new("Single figures", [.. catalogue.Figures.All.Values.Select(row => new PresetRow(row.Name, MeaningOf(row), From(row.Provenance)))]),
    ];

    /// <summary>The same with every pairing of class and material, old finish and class: for a search, as they are too many for a list.</summary>
    /// <param name="catalogue">The presets.</param>
    public static ImmutableArray<PresetTable> WithPairings(Catalogue catalogue) => [.. Of(catalogue), new("What goes on what", [.. Pairings(catalogue)])];

    private static IEnumerable<PresetRow> Pairings(Catalogue catalogue)
    {
        foreach (var product in catalogue.Products)
        {
            foreach (var material in catalogue.Materials)
                yield return Pairing($"{product.Word} on {material.Word}", catalogue.Compatibility.OnMaterial(product.Word, material.Word));
            foreach (var finish in catalogue.Finishes.Where(finish => finish.IsPaint))
                yield return Pairing($"{product.Word} over {finish.Word}", catalogue.Compatibility.OverFinish(product.Word, finish.Word));
            foreach (var below in catalogue.Products)
                yield return Pairing($"{product.Word} over {below.Word}", catalogue.Compatibility.Over(product.Word, below.Word));
        }
    }

    private static PresetRow Pairing(string pair, Judgement judgement) => new(pair, $"{Word(judgement.Verdict)}: {judgement.Reason}", From(judgement.Provenance));

    private static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Yes => "yes, clean and abraded",
        Verdict.Primer => "with a primer made for it first",
        Verdict.Window => "inside its window, or after what a missed one asks",
        Verdict.Sealer => "with a barrier between",
        Verdict.Test => "after a patch test",
        Verdict.No => "no",
        _ => "unknown: the label decides",
    };

    private static string MeaningOf(Solvent solvent)
    {
        var limits = new[]
        {
            Ppm("legal limit", solvent.Legal), Ppm("recommended", solvent.Recommended), Ppm("15 min", solvent.ShortTerm), Ppm("ceiling", solvent.Ceiling),
            Ppm("immediately dangerous", solvent.Idlh),
            solvent.LowerExplosiveLimit is { } lel ? $"LEL {Written.Number(lel.Share.Percent, 2)} % ({solvent.LowerExplosiveLimitSource}, {Word(lel.Status)})" : "does not burn",
            solvent.Ozone is { } ozone ? $"may form {Written.Number(ozone.GramsPerGram, 2)} g of ozone a gram ({Word(ozone.Status)})" : "",
        };
        var names = solvent.Aliases.IsEmpty ? "" : $" Also: {string.Join(", ", solvent.Aliases)}.";
        return $"CAS {solvent.Cas}; {string.Join("; ", limits.Where(text => text.Length > 0))}.{names} {solvent.Note}".TrimEnd();
    }

    private static string Ppm(string what, ExposureLimit? limit) =>
        limit is null ? "" : $"{what} {Written.Number(limit.Share.PartsPerMillion, 0)} ppm ({Word(limit.Status)})";

    private static string MeaningOf(Consumable row)
    {
        var far = row.GoesFar is { } reach ? $"one {row.Unit} does {Written.Number(reach.SquareFeet, 1)} ft² ({Written.Number(reach.SquareMeters, 1)} m²)" : row.Rule;
        var range = row.Range.Length > 0 ? $" [{row.Range}]" : "";
        var pack = row.Pack > 1 ? $"; packs of {row.Pack}" : "";
        var also = row.Also.IsEmpty ? "" : $"; also called {string.Join(", ", row.Also)}";
        return $"{row.Title}: {far}{range}; for {string.Join(", ", row.Operations)}{pack}{also}";
    }

    private static string MeaningOf(MaskingTape tape)
    {
        var heat = tape.HeatHigh is { } high ? $", stands {Degrees(high)}{(tape.HeatFor is { } time ? $" for {Written.Minutes(time.TotalMinutes)}" : "")}" : "";
        return $"{tape.Title}: {(tape.Dwell is { } dwell ? $"stays on {Written.Minutes(dwell.TotalMinutes)} at most" : "dwell not known")}{heat}";
    }

    private static string MeaningOf(RespiratorKind row) =>
        $"{row.Title}: {string.Join(", ", row.Factors.OrderBy(factor => factor.Value).ThenBy(factor => factor.Key, StringComparer.Ordinal).Select(factor => $"{factor.Key} {factor.Value}"))} times the limit";

    private static string MeaningOf(Figure row)
    {
        var value = row switch
        {
            { Number: { } number } => Written.Number(number, 3),
            { Share: { } share } => Written.Percent(share.DecimalFractions),
            { Time: { } time } => Written.Minutes(time.TotalMinutes),
            { Temperature: { } at } => Degrees(at),
            { Difference: { } by } => $"{Written.Number(by.Kelvins, 1)} K",
            { Length: { } length } => $"{Written.Number(length.Meters, 2)} m ({Written.Number(length.Feet, 2)} ft)",
            { Area: { } area } => $"{Written.Number(area.SquareMeters, 3)} m² ({Written.Number(area.SquareFeet, 2)} ft²)",
            { Pressure: { } pressure } => $"{Written.Number(pressure.Kilopascals, 0)} kPa ({Written.Number(pressure.PoundsForcePerSquareInch, 0)} psi)",
            { Speed: { } speed } => $"{Written.Number(speed.MetersPerSecond, 1)} m/s ({Written.Number(speed.MilesPerHour, 0)} mph)",
            _ => row.Clock?.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture) ?? "",
        };
        return $"{value}: {row.Means}{(row.Range.Length > 0 ? $" [{row.Range}]" : "")}";
    }

    private static string Degrees(UnitsNet.Temperature at) => $"{Written.Number(at.DegreesCelsius, 0)} °C ({Written.Number(at.DegreesFahrenheit, 0)} °F)";

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
    /// <param name="units">The units of a job; null: both, where there is no job.</param>
    public static PresetTable Products(Catalogue catalogue, PrintUnits? units = null) =>
        new("Products", [.. catalogue.Products.Select(row => new PresetRow(row.Word, MeaningOf(row, units), $"{From(row.Provenance)}{Moved(row)}"))]);

    /// <summary>Usual pieces.</summary>
    /// <param name="catalogue">The presets.</param>
    /// <param name="units">The units of a job; null: both, where there is no job.</param>
    public static PresetTable Pieces(Catalogue catalogue, PrintUnits? units = null) =>
        new("Pieces", [.. catalogue.Pieces.Select(row => new PresetRow(row.Name, MeaningOf(row, units), From(row.Provenance)))]);

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
        var bare = condition.BareShare > 0 ? $"about {Written.Percent(condition.BareShare)} of it is bare metal once it is prepared" : "prep lays nothing bare";
        var asks = condition.Asks.IsEmpty ? "" : $"; prep adds: {string.Join(", ", condition.Asks)}";
        return string.Join("; ", Titled(condition.Title, condition.Word).Append($"{bare}{asks}"));
    }

    private static string MeaningOf(ProductClass product, PrintUnits? units)
    {
        var coats = product.CoatsLeast == product.CoatsMost ? $"{product.CoatsMost}" : $"{product.CoatsLeast} to {product.CoatsMost}";
        var note = product.Note.Length == 0 ? "" : $" {product.Note}";
        return $"{product.Title}; {coats} coats, one can of {Mass(product.NetMass, units)} covers {Area(product.Covers, units)} in one coat, "
            + $"{Written.Percent(product.SolidsByVolume.DecimalFractions)} solids by volume, {Film(product.DryFilm, units)} dry a coat; "
            + $"touch {Written.Minutes(product.Times.Touch.TotalMinutes)}, handle {Written.Minutes(product.Times.Handle.TotalMinutes)}; stands {Heat(product.Heat, units)}; {string.Join(", ", product.Hazards)}.{note}";
    }

    private static string Moved(ProductClass product) => product.Moved.IsEmpty
        ? ""
        : $"; moved to make the row agree: {string.Join("; ", product.Moved.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => $"{pair.Key} {pair.Value}{Usual(product, pair.Key)}"))}";

    private static string Usual(ProductClass product, string field) => product.Ranges.TryGetValue(field, out var range) ? $" [{range}]" : "";

    private static List<string> Titled(string title, string word) => title == word ? [] : [title];

    private static string Mass(Mass mass, PrintUnits? units) =>
        InOrder(units, $"{Written.Number(mass.Ounces, 1)} oz", $"{Written.Number(mass.Grams, 0)} g");

    private static string Area(Area area, PrintUnits? units) =>
        InOrder(units, $"{Written.Number(area.SquareFeet, 1)} ft²", $"{Written.Number(area.SquareMeters, 2)} m²");

    private static string Film(Length film, PrintUnits? units) =>
        InOrder(units, $"{Written.Number(film.Mils, 1)} mil", $"{Written.Number(film.Micrometers, 0)} µm");

    private static string Heat(Temperature heat, PrintUnits? units) =>
        InOrder(units, $"{Written.Number(heat.DegreesFahrenheit, 0)} °F", $"{Written.Number(heat.DegreesCelsius, 0)} °C");

    // US first, as a job's own default is.
    private static string InOrder(PrintUnits? units, string us, string metric) => units switch
    {
        PrintUnits.Us => us,
        PrintUnits.Metric => metric,
        _ => $"{us} ({metric})",
    };

    private static string MeaningOf(Piece piece, PrintUnits? units) =>
        $"about {Area(piece.Outline, units)} each, usually {string.Join(" or ", piece.Materials)}";

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
