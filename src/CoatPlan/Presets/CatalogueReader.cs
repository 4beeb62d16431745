using CoatPlan.Problems;

namespace CoatPlan.Presets;

/// <summary>Reads preset files into a catalogue.</summary>
/// <remarks>
/// A file holds tables of rows by word, and may hold a table <c>sources</c> that rows cite by key. A user's file adds rows, or says
/// again only those fields of a row that are to change; <see cref="RuleFiles"/> are read by the rooms that use them. Every mistake in every file is found in one go.
/// </remarks>
public static class CatalogueReader
{
    /// <summary>Reads the built-in files and the user's over them.</summary>
    /// <param name="builtIns">Files in which each row stands once; usually <see cref="BuiltInPresets.Texts"/>.</param>
    /// <param name="overrides">The user's files, later ones winning.</param>
    public static CatalogueReading Read(IEnumerable<PresetText> builtIns, IEnumerable<PresetText> overrides)
    {
        ArgumentNullException.ThrowIfNull(builtIns);
        ArgumentNullException.ThrowIfNull(overrides);
        ImmutableArray<PresetFile> files =
        [
            .. builtIns.Where(text => !RuleFiles.Holds(text)).Select(text => PresetFile.Read(text, isOverride: false)),
            .. overrides.Where(text => !RuleFiles.Holds(text)).Select(text => PresetFile.Read(text, isOverride: true)),
        ];
        var catalogue = Tables(new PresetTables(files), files);
        var problems = files.SelectMany(file => file.Problems.InOrder()).ToImmutableArray();
        return new(problems.IsEmpty ? catalogue : null, problems);
    }

    private static Catalogue? Tables(PresetTables tables, ImmutableArray<PresetFile> files)
    {
        var materials = tables.Read("materials", MaterialRows.Material);
        var finishes = tables.Read("finishes", SurfaceRows.Finish);
        var operations = tables.Read("operations", OperationRows.Operation).OrderBy(operation => operation.Order).ToImmutableArray();
        var forms = MethodRows.AgainstPanel(tables.Read("forms", MethodRows.Form));
        var methods = tables.Read("methods", MethodRows.Method);
        var solvents = tables.Read("solvents", SolventRows.Solvent);
        var hidings = tables.Read("hiding", SurfaceRows.Hiding);
        var hazards = tables.Read("hazards", AirRows.Hazard);
        var products = tables.Read("products", new ProductRows(methods, solvents, hidings, hazards).Product);
        string[] materialWords = [.. materials.Select(row => row.Word)];
        string[] operationWords = [.. operations.Select(row => row.Word)];
        string[] formWords = [.. forms.Select(row => row.Word)];
        string[] finishWords = [.. finishes.Select(row => row.Word)];
        string[] classWords = [.. products.Select(row => row.Word)];
        var film = Film(tables.Read("film", MaterialRows.Film));
        if (film is null && !files.IsEmpty) files[0].Problems.Add(default, Sentences.MissingKey("film", "the presets", "{indoors: …, outdoors: …}"));
        return new()
        {
            Materials = materials,
            Film = film ?? new(default, default, new("", Status.FromMemory)),
            Finishes = finishes,
            Conditions = tables.Read("conditions", row => SurfaceRows.Condition(row, operationWords)),
            Forms = forms,
            Reaches = tables.Read("reaches", MethodRows.Reach),
            Methods = methods,
            Operations = operations,
            Products = products,
            Solvents = solvents,
            Compatibility = CompatibilityRows.Read(tables.Layers("compatibility"), classWords, materialWords, finishWords),
            Pieces = tables.Read("pieces", row => SupplyRows.Piece(row, materialWords, formWords)),
            Consumables = tables.Read("consumables", row => SupplyRows.Consumable(row, operationWords)),
            Tapes = tables.Read("tapes", SupplyRows.Tape),
            Abrasives = [.. tables.Read("abrasives", SupplyRows.Abrasives).SelectMany(grits => grits)],
            GritTasks = tables.Read("grit-tasks", SupplyRows.GritTask),
            Respirators = tables.Read("respirators", AirRows.Respirator),
            ServiceHeats = tables.Read("service-heat", AirRows.ServiceHeat),
            MaskKinds = tables.Read("mask-kinds", AirRows.MaskKind),
            Neighbours = tables.Read("neighbours", AirRows.Neighbour),
            Hazards = hazards,
            LightnessWords = tables.Read("lightness", SurfaceRows.Lightness),
            HidingWords = hidings,
            Figures = FiguresOf(tables.Read("figures", FigureRows.Figure)),
        };
    }

    private static Figures FiguresOf(ImmutableArray<Figure> rows)
    {
        var figures = ImmutableSortedDictionary.CreateBuilder<string, Figure>(StringComparer.Ordinal);
        foreach (var row in rows) figures[row.Name] = row;
        return new(figures.ToImmutable());
    }

    private static FilmCoefficients? Film(ImmutableArray<FilmRow> rows)
    {
        var indoors = rows.FirstOrDefault(row => row.Word == "indoors");
        var outdoors = rows.FirstOrDefault(row => row.Word == "outdoors");
        if (indoors is null || outdoors is null) return null;
        var status = indoors.Provenance.Status > outdoors.Provenance.Status ? indoors.Provenance.Status : outdoors.Provenance.Status;
        return new(indoors.Coefficient, outdoors.Coefficient, new($"{indoors.Provenance.Source}; {outdoors.Provenance.Source}", status));
    }
}
