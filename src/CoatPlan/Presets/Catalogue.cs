using System.Collections.Concurrent;
using CoatPlan.Jobs;

namespace CoatPlan.Presets;

/// <summary>What the trade knows: every table of the presets, read and checked, in the order of the files.</summary>
public sealed class Catalogue
{
    // Plans ask for rows by word many thousands of times: a table is laid out by word when it is first asked.
    private readonly ConcurrentDictionary<Type, object> byWord = new();

    /// <summary>What surfaces are made of.</summary>
    public required ImmutableArray<Material> Materials { get; init; }

    /// <summary>Heat exchange with the air.</summary>
    public required FilmCoefficients Film { get; init; }

    /// <summary>Old finishes.</summary>
    public required ImmutableArray<Finish> Finishes { get; init; }

    /// <summary>What is wrong with surfaces.</summary>
    public required ImmutableArray<Condition> Conditions { get; init; }

    /// <summary>Forms of parts.</summary>
    public required ImmutableArray<PartForm> Forms { get; init; }

    /// <summary>How well a surface can be got at.</summary>
    public required ImmutableArray<Reach> Reaches { get; init; }

    /// <summary>Ways of putting paint on.</summary>
    public required ImmutableArray<CoatingMethod> Methods { get; init; }

    /// <summary>Kinds of work, in the order of a job.</summary>
    public required ImmutableArray<Operation> Operations { get; init; }

    /// <summary>Product classes.</summary>
    public required ImmutableArray<ProductClass> Products { get; init; }

    /// <summary>Solvents and propellants.</summary>
    public required ImmutableArray<Solvent> Solvents { get; init; }

    /// <summary>What goes on and over what.</summary>
    public required Compatibility Compatibility { get; init; }

    /// <summary>Usual underhood pieces.</summary>
    public required ImmutableArray<Piece> Pieces { get; init; }

    /// <summary>What is used up beside paint.</summary>
    public required ImmutableArray<Consumable> Consumables { get; init; }

    /// <summary>Masking tapes.</summary>
    public required ImmutableArray<MaskingTape> Tapes { get; init; }

    /// <summary>Grits and their sizes, coarse to fine within a scale.</summary>
    public required ImmutableArray<Abrasive> Abrasives { get; init; }

    /// <summary>Which grit a task takes.</summary>
    public required ImmutableArray<GritTask> GritTasks { get; init; }

    /// <summary>Respirators with their factors.</summary>
    public required ImmutableArray<RespiratorKind> Respirators { get; init; }

    /// <summary>How hot places get.</summary>
    public required ImmutableArray<ServiceHeat> ServiceHeats { get; init; }

    /// <summary>Kinds of things that are masked.</summary>
    public required ImmutableArray<MaskKind> MaskKinds { get; init; }

    /// <summary>Things near a surface that ask for care.</summary>
    public required ImmutableArray<Neighbour> Neighbours { get; init; }

    /// <summary>Hazards a label may name.</summary>
    public required ImmutableArray<Hazard> Hazards { get; init; }

    /// <summary>Words for lightness.</summary>
    public required ImmutableArray<LightnessWord> LightnessWords { get; init; }

    /// <summary>Words for hiding.</summary>
    public required ImmutableArray<HidingWord> HidingWords { get; init; }

    /// <summary>Single figures that belong to no table.</summary>
    public required Figures Figures { get; init; }

    /// <summary>The words that a job may use with these presets; consumables are taken as written.</summary>
    public Vocabulary Vocabulary => new()
    {
        Materials = [.. Materials.Select(row => row.Word)],
        Finishes = [.. Finishes.Select(row => row.Word)],
        Conditions = [.. Conditions.Select(row => row.Word)],
        MaskKinds = [.. MaskKinds.Select(row => row.Word)],
        Hazards = [.. Hazards.Select(row => row.Word)],
        ProductPresets = [.. Products.Select(row => row.Word)],
        Operations = [.. Operations.Select(row => row.Word)],
        Near = [.. Neighbours.Select(row => row.Word)],
        Forms = [.. Forms.Select(row => row.Word)],
        Solvents = [.. Solvents.SelectMany(row => row.Aliases.Insert(0, row.Cas).Insert(0, row.Name))],
        MostCoats = Products.ToImmutableDictionary(row => row.Word, row => row.CoatsMost, StringComparer.Ordinal),
    };

    /// <summary>The material of a word.</summary>
    /// <param name="word">A word of <see cref="Materials"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public Material Material(string word) => Find(Materials, row => row.Word, word);

    /// <summary>The old finish of a word.</summary>
    /// <param name="word">A word of <see cref="Finishes"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public Finish Finish(string word) => Find(Finishes, row => row.Word, word);

    /// <summary>The condition of a word.</summary>
    /// <param name="word">A word of <see cref="Conditions"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public Condition Condition(string word) => Find(Conditions, row => row.Word, word);

    /// <summary>The form of a word.</summary>
    /// <param name="word">A word of <see cref="Forms"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public PartForm Form(string word) => Find(Forms, row => row.Word, word);

    /// <summary>The reach of a word.</summary>
    /// <param name="word">A word of <see cref="Reaches"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public Reach Reach(string word) => Find(Reaches, row => row.Word, word);

    /// <summary>The way of putting paint on, by its word.</summary>
    /// <param name="word">A word of <see cref="Methods"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public CoatingMethod Method(string word) => Find(Methods, row => row.Word, word);

    /// <summary>The operation of a word.</summary>
    /// <param name="word">A word of <see cref="Operations"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public Operation Operation(string word) => Find(Operations, row => row.Word, word);

    /// <summary>The product class of a word.</summary>
    /// <param name="word">A word of <see cref="Products"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public ProductClass Product(string word) => Find(Products, row => row.Word, word);

    /// <summary>The kind of masked thing of a word.</summary>
    /// <param name="word">A word of <see cref="MaskKinds"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public MaskKind MaskKind(string word) => Find(MaskKinds, row => row.Word, word);

    /// <summary>The neighbour of a word.</summary>
    /// <param name="word">A word of <see cref="Neighbours"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public Neighbour Neighbour(string word) => Find(Neighbours, row => row.Word, word);

    /// <summary>The hazard of a word.</summary>
    /// <param name="word">A word of <see cref="Hazards"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public Hazard Hazard(string word) => Find(Hazards, row => row.Word, word);

    /// <summary>The consumable of a word.</summary>
    /// <param name="word">A word of <see cref="Consumables"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public Consumable Consumable(string word) => Find(Consumables, row => row.Word, word);

    /// <summary>The respirator of a word.</summary>
    /// <param name="word">A word of <see cref="Respirators"/>.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public RespiratorKind Respirator(string word) => Find(Respirators, row => row.Word, word);

    /// <summary>The solvent of a name, an alias or a CAS number; null where nobody knows it.</summary>
    /// <param name="nameOrCas">As a data sheet writes it; case does not matter.</param>
    public Solvent? Solvent(string nameOrCas)
    {
        ArgumentNullException.ThrowIfNull(nameOrCas);
        return Presets.Solvents.Find(Solvents, nameOrCas);
    }

    /// <summary>True over outline area where the job gives none: the larger of the material's and the form's.</summary>
    /// <param name="material">A material's word.</param>
    /// <param name="form">A form's word.</param>
    /// <exception cref="ArgumentException">No row has the word.</exception>
    public double Relief(string material, string form) => Math.Max(Material(material).Relief, Form(form).Relief);

    private T Find<T>(ImmutableArray<T> rows, Func<T, string> wordOf, string word)
        where T : class
    {
        var laidOut = (RowsByWord<T>)byWord.GetOrAdd(typeof(T), static (_, table) => new RowsByWord<T>(table.Rows, table.WordOf), (Rows: rows, WordOf: wordOf));
        return laidOut[word];
    }
}
